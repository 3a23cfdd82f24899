import type { LivingUnit } from "../model/tables.ts";
import { type CableStep, cablePath } from "../plant/cablePath.ts";
import { type Point, spanEnds } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import type { NearIndex } from "./nearIndex.ts";
import { compareNatural } from "./order.ts";
import type { Site } from "./sites.ts";

/** A unit with the cable it lies nearest to and where along it. */
export type PlacedUnit = {
  readonly unit: LivingUnit;
  readonly cableId: string;
  /** From the cable's feed end to the foot of the unit on the strand, m. */
  readonly stationM: number;
};

/**
 * Units in order along the strand, cable by cable in the order given; units without a site in reach are left out.
 */
export function unitOrder(
  plant: Plant,
  cableIds: readonly string[],
  units: readonly LivingUnit[],
  sites: readonly Site[],
  index: NearIndex,
): readonly PlacedUnit[] {
  const rank = new Map(cableIds.map((id, position) => [id, position]));
  const stepNumbers = new Map(cableIds.map((id) => [id, stepNumbersOf(plant, id)]));
  return units
    .flatMap((unit): PlacedUnit[] => {
      const [first, ...others] = index.near(unit);
      if (!first) return [];
      const nearest = others.reduce((best, one) => (one.distanceM < best.distanceM ? one : best), first);
      const site = sites[nearest.index];
      if (!site) return [];
      const number = stepNumbers.get(site.cableId)?.get(site.spanId) ?? 0;
      return [{ unit, cableId: site.cableId, stationM: footM(plant, site.cableId, number, unit) }];
    })
    .sort(
      (a, b) =>
        (rank.get(a.cableId) ?? 0) - (rank.get(b.cableId) ?? 0) ||
        a.stationM - b.stationM ||
        compareNatural(a.unit.id, b.unit.id),
    );
}

function stepNumbersOf(plant: Plant, cableId: string): ReadonlyMap<string, number> {
  return new Map(cablePath(plant, cableId).steps.map((step, number) => [step.spanId, number]));
}

/** Station of the nearest point among a step and its neighbours. */
function footM(plant: Plant, cableId: string, number: number, point: Point): number {
  const feet = cablePath(plant, cableId)
    .steps.slice(Math.max(0, number - 1), number + 2)
    .map((step) => footOn(plant, step, point));
  return feet.reduce((best, one) => (one.awayM < best.awayM ? one : best)).stationM;
}

function footOn(plant: Plant, step: CableStep, point: Point) {
  const ends = spanEnds(plant, step.spanId);
  const [from, to] = step.reversed ? [ends.to, ends.from] : [ends.from, ends.to];
  const eastM = to.eastM - from.eastM;
  const northM = to.northM - from.northM;
  const squareM2 = eastM * eastM + northM * northM;
  const along = (point.eastM - from.eastM) * eastM + (point.northM - from.northM) * northM;
  const part = squareM2 > 0 ? Math.min(1, Math.max(0, along / squareM2)) : 0;
  const awayM = Math.hypot(point.eastM - from.eastM - part * eastM, point.northM - from.northM - part * northM);
  return { awayM, stationM: step.startM + part * step.lengthM };
}
