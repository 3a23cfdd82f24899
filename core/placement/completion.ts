import type { Field } from "./field.ts";

/** What the units a point may still be given can be worth to it, in tables the strand program reads at every step. */
export type Completion = {
  /** by arc: where in `table` the row after this arc begins, the arc itself no longer to be given; by load */
  readonly rowAfter: Int32Array;
  /** by arc: the row while the arc may still be given */
  readonly rowBefore: Int32Array;
  readonly table: Float64Array;
  /** Sum of h at the start and of all prices: the plain Lagrange bound. */
  readonly bound: number;
};

/**
 * h(i, t, l) = min over extra load e from candidates t.. of M(i, l + e) less the best knapsack value of price - c.
 *
 * Cost so far, prices of the units not yet given and h of every point together never exceed the cost of any completion. Filled by
 * one backward knapsack a point.
 *
 * @param order  the units in the order they are given out
 * @param price  by unit, at most what leaving it out costs
 */
export function completionBounds(field: Field, order: Int32Array, price: Float64Array): Completion {
  const { problem, pointCount, firstPointArc, capacity, firstLoad, loadCost } = field;
  const { firstArc, arcPoint, arcCost, demand } = problem;
  const rowAfter = new Int32Array(arcPoint.length);
  const rowBefore = new Int32Array(arcPoint.length);
  const rowNow = new Int32Array(pointCount);
  let cells = 0;
  for (let point = 0; point < pointCount; point += 1) {
    const width = capacity[point] + 1;
    const rows = firstPointArc[point + 1] - firstPointArc[point] + 1;
    cells += rows * width;
    rowNow[point] = cells - width;
  }
  const table = new Float64Array(cells);
  for (let point = 0; point < pointCount; point += 1)
    for (let load = 0; load <= capacity[point]; load += 1)
      table[rowNow[point] + load] = loadCost[firstLoad[point] + load];
  let bound = 0;
  for (let step = order.length - 1; step >= 0; step -= 1) {
    const unit = order[step];
    bound += price[unit];
    for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) {
      const point = arcPoint[arc];
      const most = capacity[point];
      const after = rowNow[point];
      const before = after - most - 1;
      const gain = price[unit] - arcCost[arc];
      for (let load = 0; load <= most; load += 1) {
        const without = table[after + load];
        const taken = load + demand[unit] <= most ? table[after + load + demand[unit]] - gain : without;
        table[before + load] = Math.min(taken, without);
      }
      rowAfter[arc] = after;
      rowBefore[arc] = before;
      rowNow[point] = before;
    }
  }
  for (let point = 0; point < pointCount; point += 1) bound += table[rowNow[point]];
  return { rowAfter, rowBefore, table, bound };
}
