import type { Plant } from "../../core/plant/plant.ts";
import { indexPoints, type PlaceIndex } from "./placeIndex.ts";
import type { Places } from "./places.ts";

/** Poles made ready for drawing. */
export type PoleMarks = {
  readonly ids: readonly string[];
  readonly tags: readonly string[];
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
  /** Other parties on the pole. */
  readonly otherPartyCount: Uint8Array;
  readonly index: PlaceIndex;
};

/** Poles of a route in the order of their file. */
export function poleMarks(plant: Plant, places: Places): PoleMarks {
  const poles = [...plant.route().pole.values()];
  const points = poles.map((one) => places.poleAt(one.id));
  const eastM = Float64Array.from(points, (one) => one.eastM);
  const northM = Float64Array.from(points, (one) => one.northM);
  const parties = otherPartiesByPole(plant);
  return {
    ids: poles.map((one) => one.id),
    tags: poles.map((one) => one.tag),
    eastM,
    northM,
    otherPartyCount: Uint8Array.from(poles, (one) => Math.min(255, parties.get(one.id)?.size ?? 0)),
    index: indexPoints(eastM, northM),
  };
}

/** Owners of wires other than ours, by pole. */
export function otherPartiesByPole(plant: Plant): ReadonlyMap<string, ReadonlySet<string>> {
  const byPole = new Map<string, Set<string>>();
  for (const { poleId, owner, kind } of plant.route().attachment.values()) {
    if (kind === "ourStrand") continue;
    const owners = byPole.get(poleId);
    if (owners) owners.add(owner);
    else byPole.set(poleId, new Set([owner]));
  }
  return byPole;
}
