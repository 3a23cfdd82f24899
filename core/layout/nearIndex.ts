import { type Point, planeDistanceM } from "../plant/geometry.ts";

/** What lies within a fixed distance of a point, without asking everything. */
export type NearIndex = {
  /** Positions in the list given, ascending, with their distances, m. */
  readonly near: (point: Point) => { readonly index: number; readonly distanceM: number }[];
};

/**
 * Points sorted into squares as wide as the distance asked for.
 *
 * @param reachM  m, > 0; a point exactly at this distance counts as near
 */
export function openNearIndex(points: readonly Point[], reachM: number): NearIndex {
  if (!(reachM > 0)) throw new RangeError(`reachM must be positive, not ${reachM}`);
  const squares = new Map<string, number[]>();
  const cell = (valueM: number) => Math.floor(valueM / reachM);
  points.forEach((point, index) => {
    const key = `${cell(point.eastM)} ${cell(point.northM)}`;
    const square = squares.get(key);
    if (square) square.push(index);
    else squares.set(key, [index]);
  });
  return {
    near(point) {
      const found: { index: number; distanceM: number }[] = [];
      for (let east = cell(point.eastM) - 1; east <= cell(point.eastM) + 1; east += 1) {
        for (let north = cell(point.northM) - 1; north <= cell(point.northM) + 1; north += 1) {
          for (const index of squares.get(`${east} ${north}`) ?? []) {
            const other = points[index];
            const distanceM = other ? planeDistanceM(point, other) : Number.POSITIVE_INFINITY;
            if (distanceM <= reachM) found.push({ index, distanceM });
          }
        }
      }
      return found.sort((a, b) => a.index - b.index);
    },
  };
}
