import type { LivingUnit, UnservedUnit } from "../model/tables.ts";
import { cablesInSpan } from "../plant/cablePath.ts";
import { forbiddenOver, passedWords } from "../plant/dropPassing.ts";
import { farPoleId, type Point, planeDistanceM, spansAtPole } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import type { RefusedPoint } from "./hangingPoints.ts";
import type { NearIndex } from "./nearIndex.ts";
import type { Site } from "./sites.ts";

/** A unit no terminal serves, and why. */
export type Unserved = Pick<UnservedUnit, "livingUnitId" | "kind" | "reason">;

/** Refused points with an index over them. */
export type RefusedIndex = { readonly points: readonly RefusedPoint[]; readonly near: NearIndex["near"] };

/**
 * Why a terminal does not hang at its units' first choice: the side of a pole with the shortest drops in all was refused.
 *
 * @returns one sentence; empty where it hangs at the first choice or the first choice was open but dearer
 */
export function whyNotFirst(plant: Plant, site: Site, units: readonly LivingUnit[], refused: RefusedIndex): string {
  const runM = (from: Point) => units.reduce((sum, unit) => sum + planeDistanceM(from, unit), 0);
  const hereM = runM(site);
  const better = refused
    .near(site)
    .flatMap(({ index }) => refused.points[index] ?? [])
    .filter((one) => one.cableId === site.cableId)
    .map((point) => ({ point, runM: runM(point) }))
    .filter((one) => one.runM < hereM);
  const [first, ...others] = better;
  if (!first) return "";
  const { point } = others.reduce((best, one) => (one.runM < best.runM ? one : best), first);
  return reasonText(plant, site, point);
}

/** What became of a first choice, in words. */
export function reasonText(
  plant: Plant,
  site: { readonly spanId: string; readonly poleId: string },
  refused: { readonly spanId: string; readonly poleId: string; readonly reason: string },
): string {
  const moved =
    site.poleId === refused.poleId
      ? "hung on the other side of the pole"
      : `hung at pole ${plant.rowOf("pole", site.poleId).tag} instead`;
  return `First choice, ${sideText(plant, refused.spanId, refused.poleId)}: ${refused.reason}; ${moved}.`;
}

/** A side of a pole in words. */
export function sideText(plant: Plant, spanId: string, poleId: string): string {
  const far = plant.rowOf("pole", farPoleId(plant, spanId, poleId));
  return `pole ${plant.rowOf("pole", poleId).tag} toward pole ${far.tag}`;
}

/**
 * Why no terminal serves a unit.
 *
 * @param within.sites  places within drop reach where a terminal may hang
 * @param within.full   why they do not hold it
 */
export function whyUnserved(
  plant: Plant,
  unit: LivingUnit,
  within: { readonly sites: readonly Point[]; readonly full: string },
  refused: RefusedIndex,
): Unserved {
  const livingUnitId = unit.id;
  if (within.sites.length > 0) {
    const barred = within.sites.map((site) => forbiddenOver(plant, site, unit));
    const [first] = barred;
    if (first && !barred.includes(null)) {
      const reason = `Every drop within reach would pass over what no drop may: ${passedWords(first)}.`;
      return { livingUnitId, kind: "crossing", reason };
    }
    const reason = `Every terminal that could hang within drop reach is full: ${within.full}.`;
    return { livingUnitId, kind: "capacity", reason };
  }
  const [first, ...others] = refused.near(unit);
  if (!first) return beyondReach(plant, unit);
  const nearest = others.reduce((best, one) => (one.distanceM < best.distanceM ? one : best), first);
  const point = refused.points[nearest.index];
  const where = point ? `${sideText(plant, point.spanId, point.poleId)}: ${point.reason}` : "";
  return { livingUnitId, kind: "forbidden", reason: `No terminal may hang within drop reach; the nearest, ${where}.` };
}

function beyondReach(plant: Plant, unit: LivingUnit): Unserved {
  const livingUnitId = unit.id;
  const [nearest] = plant
    .near("pole", unit, plant.settings().dropReachM)
    .filter((id) => spansAtPole(plant, id).every((spanId) => cablesInSpan(plant, spanId).length === 0))
    .map((id) => plant.rowOf("pole", id))
    .sort((a, b) => planeDistanceM(a, unit) - planeDistanceM(b, unit));
  if (!nearest) return { livingUnitId, kind: "reach", reason: "No pole side on a cable lies within drop reach." };
  const reason = `Pole ${nearest.tag} stands within drop reach, but no strand with a cable passes it.`;
  return { livingUnitId, kind: "noStrand", reason };
}
