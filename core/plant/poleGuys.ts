import type { WindyCase } from "../model/loadRows.ts";
import { guyLoad } from "../strand/guyLoad.ts";
import { outwardRad } from "./geometry.ts";
import { againstRad, guyShares, type Pull } from "./guyShares.ts";
import { defineQuery, type Plant, type Query } from "./plant.ts";
import { endsHere, polePull, strungSpans } from "./poleLoad.ts";
import { strandAtPole } from "./strandHeight.ts";

/** A guy that stands further than this from straight against a pull does not hold it, rad. */
const holdsWithinRad = Math.PI / 6;

/** A pull that wants a guy: how far the strand turns at the pole, were all spans pulled alike. */
export type TurnAtPole = {
  /** The strand ends here rather than turns. */
  readonly isDeadEnd: boolean;
  /** Angle of two equal pulls that would pull the pole as much, rad. */
  readonly turnRad: number;
  /** Direction that a guy must stand in, rad, counter-clockwise from east. */
  readonly guyRad: number;
  readonly isHeld: boolean;
};

/** How the strand turns at a pole and whether guys hold it; null where no strand comes by or the pulls cancel. */
export const turnAtPole = defineQuery("turn-at-pole", (plant, poleId): TurnAtPole | null => {
  const strung = strungSpans(plant, poleId);
  const pull = sum(strung.map((spanId) => pullOf(plant, poleId, spanId, 1)));
  const size = Math.hypot(pull.eastN, pull.northN);
  if (!(size > 1e-9)) return null;
  const guyRad = Math.atan2(-pull.northN, -pull.eastN);
  return {
    isDeadEnd: endsHere(plant, strung),
    turnRad: 2 * Math.asin(Math.min(1, size / 2)),
    guyRad,
    isHeld: isHeld(
      pull,
      guysAt(plant, poleId).map((guy) => guy.directionRad),
    ),
  };
});

/** What the guys of a pole hold of the level pull in a case, with its load factors, N, by guy; null where a tension is unknown. */
const guyLoads: Readonly<Record<WindyCase, Query<ReadonlyMap<string, number> | null>>> = {
  loaded: defineQuery("guy-loads-loaded", (plant, poleId) => loadsOf(plant, poleId, "loaded")),
  extremeWind: defineQuery("guy-loads-extreme-wind", (plant, poleId) => loadsOf(plant, poleId, "extremeWind")),
  extremeIce: defineQuery("guy-loads-extreme-ice", (plant, poleId) => loadsOf(plant, poleId, "extremeIce")),
};

function loadsOf(plant: Plant, poleId: string, condition: WindyCase): ReadonlyMap<string, number> | null {
  const pull = polePull(plant, poleId, condition);
  if (!pull) return null;
  const guys = guysAt(plant, poleId);
  const shares = guyShares(
    pull.factored,
    guys.map((guy) => guy.directionRad),
  );
  return new Map(guys.map((guy, at) => [guy.id, shares[at] ?? 0]));
}

/** Level pull that a guy holds in a case, with its load factors, N; null where a tension of the strand is unknown. */
export function guyPullN(plant: Plant, guyId: string, condition: WindyCase): number | null {
  return guyLoads[condition](plant, plant.rowOf("guy", guyId).poleId)?.get(guyId) ?? null;
}

/** Tension along a guy in a case, with the load factors, N; null where a tension of the strand is unknown. */
export function guyTensionN(plant: Plant, guyId: string, condition: WindyCase): number | null {
  const { poleId, heightM, leadM } = plant.rowOf("guy", guyId);
  const pullN = guyPullN(plant, guyId, condition);
  if (pullN === null) return null;
  const pulls = [{ pullN, heightM: strandAtPole(plant, poleId).heightM }];
  return guyLoad({ pulls, guyHeightM: heightM, leadM }).guyN;
}

function guysAt(plant: Plant, poleId: string) {
  return plant.where("guy", "poleId", poleId).map((id) => plant.rowOf("guy", id));
}

function pullOf(plant: Plant, poleId: string, spanId: string, horizontalN: number): Pull {
  const directionRad = outwardRad(plant, poleId, spanId);
  return { eastN: horizontalN * Math.cos(directionRad), northN: horizontalN * Math.sin(directionRad) };
}

function sum(pulls: readonly Pull[]): Pull {
  return {
    eastN: pulls.reduce((total, one) => total + one.eastN, 0),
    northN: pulls.reduce((total, one) => total + one.northN, 0),
  };
}

function isHeld(pull: Pull, directionsRad: readonly number[]): boolean {
  if (directionsRad.some((directionRad) => againstRad(pull, directionRad) <= holdsWithinRad)) return true;
  return guyShares(pull, directionsRad).filter((load) => load > 0).length > 1;
}
