import type { WindyCase } from "../model/loadRows.ts";
import { outwardRad, spansAtPole } from "./geometry.ts";
import type { Pull } from "./guyShares.ts";
import { type FactorOfLoad, loadFactorFor, windFactorFor } from "./loadFactors.ts";
import { defineQuery, type Plant, type Query } from "./plant.ts";
import { strandRise } from "./strandRise.ts";
import { stateIn } from "./strength.ts";
import { windyLoad } from "./windyLoad.ts";

/** What our strand does to a pole in a case with wind, level, before load factors, and the factors. */
export type PolePull = {
  /** Level pull of all strand at the pole together, N. */
  readonly tensionN: number;
  /** Wind on half of each span, blowing the way of that pull, N. */
  readonly windN: number;
  readonly tension: FactorOfLoad;
  readonly wind: FactorOfLoad;
  /** Both with their factors, on the route's grid, N. */
  readonly factored: Pull;
};

/**
 * Level pull of our strand on a pole in a case; null where a tension is unknown or the route is not checked under the case. Wind presses
 * on a span by the square of the sine of its angle to the wind, so that it presses along no span; terminals and coils stand in no wind.
 *
 * @source equilibrium of level forces at a point; load factors: NESC T253-1, from memory
 */
export function polePull(plant: Plant, poleId: string, condition: WindyCase): PolePull | null {
  return pulls[condition](plant, poleId);
}

/** Pulls that differ by less are taken to cancel, N. */
const leastPullN = 1e-6;

const pulls: Readonly<Record<WindyCase, Query<PolePull | null>>> = {
  loaded: defineQuery("pole-pull-loaded", (plant, poleId) => pullOf(plant, poleId, "loaded")),
  extremeWind: defineQuery("pole-pull-extreme-wind", (plant, poleId) => pullOf(plant, poleId, "extremeWind")),
  extremeIce: defineQuery("pole-pull-extreme-ice", (plant, poleId) => pullOf(plant, poleId, "extremeIce")),
};

function pullOf(plant: Plant, poleId: string, condition: WindyCase): PolePull | null {
  const spanIds = strungSpans(plant, poleId);
  let [eastN, northN] = [0, 0];
  for (const spanId of spanIds) {
    const state = stateIn(plant, spanId, condition);
    if (!state) return null;
    const directionRad = outwardRad(plant, poleId, spanId);
    eastN += state.horizontalN * Math.cos(directionRad);
    northN += state.horizontalN * Math.sin(directionRad);
  }
  const tensionN = Math.hypot(eastN, northN);
  const pullRad = Math.atan2(northN, eastN);
  // where the pulls cancel, no way of the wind is worse than another, and nothing holds against it
  const windN = spanIds.reduce((sum, id) => {
    const acrossFrac = tensionN > leastPullN ? Math.sin(outwardRad(plant, poleId, id) - pullRad) ** 2 : 0;
    return sum + windOnHalfN(plant, id, condition) * acrossFrac;
  }, 0);
  const tension = loadFactorFor(plant, endsHere(plant, spanIds) ? "deadEnd" : "tension", condition);
  const wind = windFactorFor(plant, spanIds, condition);
  const factoredN = tension.factor * tensionN + wind.factor * windN;
  const factored = { eastN: factoredN * Math.cos(pullRad), northN: factoredN * Math.sin(pullRad) };
  return { tensionN, windN, tension, wind, factored };
}

/** What our line does to a pole in a case, with the load factors, N: what whoever answers for the pole adds to the rest on it. */
export type LineOnPole = {
  /** Weight and ice of the half spans, terminals and coils by their leverage, and what a slope adds. */
  readonly downN: number;
  /** Wind on half of each span, blowing across it. */
  readonly acrossN: number;
  readonly vertical: FactorOfLoad;
  readonly wind: FactorOfLoad;
};

/**
 * Weight and wind of our line on a pole; null where it carries none, a tension is unknown, or the route is not checked under the case.
 * The pull of the strand and the press of guys are not in it.
 *
 * @source equilibrium of each span between its supports; load factors: NESC T253-1, from memory
 */
export function lineOnPole(plant: Plant, poleId: string, condition: WindyCase): LineOnPole | null {
  const spanIds = strungSpans(plant, poleId);
  let downN = 0;
  for (const spanId of spanIds) {
    const state = stateIn(plant, spanId, condition);
    if (!state) return null;
    const { fromPoleId, lengthM } = plant.rowOf("span", spanId);
    const { riseM } = strandRise(plant, spanId);
    const isNear = fromPoleId === poleId;
    const hungN = state.pointLoads.reduce(
      (sum, { atM, weightN }) => sum + (weightN * (isNear ? lengthM - atM : atM)) / lengthM,
      0,
    );
    const slopeN = state.horizontalN * (riseM / lengthM) * (isNear ? -1 : 1);
    downN += (state.verticalNPerM * lengthM) / 2 + hungN + slopeN;
  }
  if (spanIds.length === 0) return null;
  const vertical = loadFactorFor(plant, "vertical", condition);
  const wind = windFactorFor(plant, spanIds, condition);
  const windN = spanIds.reduce((sum, id) => sum + windOnHalfN(plant, id, condition), 0);
  return { downN: vertical.factor * downN, acrossN: wind.factor * windN, vertical, wind };
}

/** Wind across a span on the half that a pole bears, N. */
function windOnHalfN(plant: Plant, spanId: string, condition: WindyCase): number {
  const load = windyLoad(plant, spanId, condition);
  return load === null ? 0 : (load.windNPerM * plant.rowOf("span", spanId).lengthM) / 2;
}

/** Spans at a pole that carry strand of ours. */
export function strungSpans(plant: Plant, poleId: string): readonly string[] {
  return spansAtPole(plant, poleId).filter((spanId) => plant.rowOf("span", spanId).strandSectionId !== null);
}

/** Whether strand ends at a pole: a section has one span there. */
export function endsHere(plant: Plant, spanIds: readonly string[]): boolean {
  const sections = spanIds.map((spanId) => plant.rowOf("span", spanId).strandSectionId);
  return sections.some((one) => sections.filter((other) => other === one).length === 1);
}
