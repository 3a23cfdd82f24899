import type { Problem } from "./problem.ts";

/** Some points and units of a problem as a problem of their own, and which of the whole they are. */
export type Part = {
  readonly problem: Problem;
  /** by number in the part: the number in the whole */
  readonly points: Int32Array;
  readonly units: Int32Array;
};

/** Cuts a part out: the points given, in that order, the units given, in that order, and the arcs between them. */
export function partOf(whole: Problem, points: Int32Array, units: Int32Array): Part {
  const numberOf = new Map<number, number>();
  points.forEach((point, number) => {
    numberOf.set(point, number);
  });
  const firstArc = new Int32Array(units.length + 1);
  const arcPoint: number[] = [];
  const arcCost: number[] = [];
  units.forEach((unit, number) => {
    const arcs: { point: number; cost: number }[] = [];
    for (let arc = whole.firstArc[unit]; arc < whole.firstArc[unit + 1]; arc += 1) {
      const point = numberOf.get(whole.arcPoint[arc]);
      if (point !== undefined) arcs.push({ point, cost: whole.arcCost[arc] });
    }
    for (const { point, cost } of arcs.sort((a, b) => a.point - b.point)) {
      arcPoint.push(point);
      arcCost.push(cost);
    }
    firstArc[number + 1] = arcPoint.length;
  });
  const problem: Problem = {
    points: Array.from(points, (point) => whole.points[point]),
    demand: Int32Array.from(units, (unit) => whole.demand[unit]),
    firstArc,
    arcPoint: Int32Array.from(arcPoint),
    arcCost: Float64Array.from(arcCost),
  };
  return { problem, points, units };
}
