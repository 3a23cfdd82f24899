import { type Point, planeDistanceM, spansAtPole } from "./geometry.ts";
import type { Plant } from "./plant.ts";
import { terminalHang } from "./terminalView.ts";

/** A row and how far it is, m in plan. */
export type Near = { readonly id: string; readonly distanceM: number };

/** Living units within a distance of a point, nearest first. */
export function unitsNear(plant: Plant, point: Point, radiusM: number): readonly Near[] {
  return nearestFirst(
    plant.near("livingUnit", point, radiusM).map((id) => ({
      id,
      distanceM: planeDistanceM(point, plant.rowOf("livingUnit", id)),
    })),
  );
}

/**
 * Terminals within a distance of a point, nearest first. Found by the poles around: a terminal in the middle of a
 * span longer than the company's longest may be missed.
 */
export function terminalsNear(plant: Plant, point: Point, radiusM: number): readonly Near[] {
  const poleIds = plant.near("pole", point, radiusM + plant.settings().maxSpanM / 2);
  const spanIds = new Set(poleIds.flatMap((id) => spansAtPole(plant, id)));
  const terminalIds = [...spanIds].flatMap((id) => plant.where("terminal", "spanId", id));
  return nearestFirst(
    terminalIds
      .map((id) => ({ id, distanceM: planeDistanceM(point, terminalHang(plant, id)) }))
      .filter((one) => one.distanceM <= radiusM),
  );
}

function nearestFirst(found: readonly Near[]): readonly Near[] {
  return [...found].sort((a, b) => a.distanceM - b.distanceM || (a.id < b.id ? -1 : 1));
}
