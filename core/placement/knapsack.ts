import type { Field } from "./field.ts";

/** Room for one knapsack at a time, as large as the largest point needs. */
export type KnapsackDesk = {
  readonly gain: Float64Array;
  readonly taker: Int32Array;
  readonly table: Float64Array;
};

/** Makes room for the knapsacks of a field. */
export function openKnapsacks({ pointCount, firstPointArc, capacity }: Field): KnapsackDesk {
  let items = 0;
  let cells = 0;
  for (let point = 0; point < pointCount; point += 1) {
    const reach = firstPointArc[point + 1] - firstPointArc[point];
    items = Math.max(items, reach);
    cells = Math.max(cells, (reach + 1) * (capacity[point] + 1));
  }
  return { gain: new Float64Array(items), taker: new Int32Array(items), table: new Float64Array(cells) };
}

/**
 * What a point is worth at given prices: min over sets of its units of M(i, load) - sum of (price(j) - c(j, i)), 0 for none.
 *
 * Backward knapsack: h(t, l) = min(h(t+1, l), h(t+1, l + u(t)) - gain(t)), h(last, l) = M(i, l).
 *
 * @param served  counts up each unit of the best set
 * @returns 0 or less
 */
export function pricePoint(
  field: Field,
  point: number,
  price: Float64Array,
  served: Int32Array,
  { gain, taker, table }: KnapsackDesk,
): number {
  const { problem, arcUnit, pointArc, firstPointArc, firstLoad, loadCost } = field;
  const most = field.capacity[point];
  const width = most + 1;
  let count = 0;
  for (let one = firstPointArc[point]; one < firstPointArc[point + 1]; one += 1) {
    const arc = pointArc[one];
    const unit = arcUnit[arc];
    const gained = price[unit] - problem.arcCost[arc];
    if (gained <= 0 || problem.demand[unit] > most) continue;
    gain[count] = gained;
    taker[count] = unit;
    count += 1;
  }
  for (let load = 0; load <= most; load += 1) table[count * width + load] = loadCost[firstLoad[point] + load];
  for (let item = count - 1; item >= 0; item -= 1) {
    const demand = problem.demand[taker[item]];
    const row = item * width;
    for (let load = 0; load <= most; load += 1) {
      const without = table[row + width + load];
      const taken = load + demand <= most ? table[row + width + load + demand] - gain[item] : without;
      table[row + load] = Math.min(taken, without);
    }
  }
  let load = 0;
  for (let item = 0; item < count; item += 1) {
    if (table[item * width + load] === table[(item + 1) * width + load]) continue;
    load += problem.demand[taker[item]];
    served[taker[item]] += 1;
  }
  return table[0];
}
