import type { Field } from "./field.ts";

/** Room for one knapsack at a time, as large as the largest point needs. */
export type KnapsackDesk = {
  /** Units that ask one port, dearest first; no more than the point has ports. */
  readonly ones: Takers;
  /** All others. */
  readonly larger: Takers;
  readonly table: Float64Array;
  /** by load of the larger ones, how many of the ones come on top */
  readonly added: Int32Array;
};

/** Units a point could take and what each would gain it. */
type Takers = { count: number; readonly unit: Int32Array; readonly gain: Float64Array };

/** Makes room for the knapsacks of a field. */
export function openKnapsacks({
  problem,
  pointCount,
  firstPointArc,
  pointArc,
  arcUnit,
  capacity,
}: Field): KnapsackDesk {
  let ports = 0;
  let most = 0;
  let cells = 0;
  for (let point = 0; point < pointCount; point += 1) {
    let larger = 0;
    for (let one = firstPointArc[point]; one < firstPointArc[point + 1]; one += 1)
      if (problem.demand[arcUnit[pointArc[one]]] !== 1) larger += 1;
    ports = Math.max(ports, capacity[point]);
    most = Math.max(most, larger);
    cells = Math.max(cells, (larger + 1) * (capacity[point] + 1));
  }
  return {
    ones: openTakers(ports + 1),
    larger: openTakers(most),
    table: new Float64Array(cells),
    added: new Int32Array(ports + 1),
  };
}

function openTakers(room: number): Takers {
  return { count: 0, unit: new Int32Array(room), gain: new Float64Array(room) };
}

/**
 * What a point is worth at given prices: min over sets of its units of M(i, load) - sum of (price(j) - c(j, i)), 0 for none.
 *
 * Of the units that ask one port the dearest go first, so a count says which; only the larger ones need a knapsack:
 * h(last, l) = min over e of M(i, l + e) - the e dearest, h(t, l) = min(h(t+1, l), h(t+1, l + u(t)) - gain(t)).
 *
 * @param served  counts up each unit of the best set
 * @returns 0 or less
 */
export function pricePoint(
  field: Field,
  point: number,
  price: Float64Array,
  served: Int32Array,
  desk: KnapsackDesk,
): number {
  const { ones, larger, table, added } = desk;
  const { demand } = field.problem;
  const width = field.capacity[point] + 1;
  gather(field, point, price, desk);
  const loads = larger.count === 0 ? 1 : width;
  for (let load = 0; load < loads; load += 1) addOnes(field, point, load, desk);
  for (let item = larger.count - 1; item >= 0; item -= 1) {
    const asked = demand[larger.unit[item]];
    const row = item * width;
    for (let load = 0; load < width; load += 1) {
      const without = table[row + width + load];
      const taken = load + asked < width ? table[row + width + load + asked] - larger.gain[item] : without;
      table[row + load] = Math.min(taken, without);
    }
  }
  let load = 0;
  for (let item = 0; item < larger.count; item += 1) {
    if (table[item * width + load] === table[(item + 1) * width + load]) continue;
    load += demand[larger.unit[item]];
    served[larger.unit[item]] += 1;
  }
  for (let one = 0; one < added[load]; one += 1) served[ones.unit[one]] += 1;
  return table[0];
}

/** The units worth taking. */
function gather(field: Field, point: number, price: Float64Array, { ones, larger }: KnapsackDesk): void {
  const { problem, arcUnit, pointArc, firstPointArc } = field;
  const most = field.capacity[point];
  ones.count = 0;
  larger.count = 0;
  for (let at = firstPointArc[point]; at < firstPointArc[point + 1]; at += 1) {
    const arc = pointArc[at];
    const unit = arcUnit[arc];
    const gain = price[unit] - problem.arcCost[arc];
    if (gain <= 0 || problem.demand[unit] > most) continue;
    if (problem.demand[unit] === 1) insert(ones, unit, gain, most);
    else {
      larger.unit[larger.count] = unit;
      larger.gain[larger.count] = gain;
      larger.count += 1;
    }
  }
}

/** Keeps the `most` dearest, dearest first. */
function insert(ones: Takers, unit: number, gain: number, most: number): void {
  if (ones.count === most && gain <= ones.gain[most - 1]) return;
  let at = Math.min(ones.count, most - 1);
  for (; at > 0 && ones.gain[at - 1] < gain; at -= 1) {
    ones.gain[at] = ones.gain[at - 1];
    ones.unit[at] = ones.unit[at - 1];
  }
  ones.gain[at] = gain;
  ones.unit[at] = unit;
  if (ones.count < most) ones.count += 1;
}

/** h(last, load), and how many of the ones it takes. */
function addOnes(field: Field, point: number, load: number, { ones, larger, table, added }: KnapsackDesk): void {
  const { firstLoad, loadCost } = field;
  const row = firstLoad[point] + load;
  const most = Math.min(ones.count, field.capacity[point] - load);
  let least = loadCost[row];
  let gained = 0;
  added[load] = 0;
  for (let count = 1; count <= most; count += 1) {
    gained += ones.gain[count - 1];
    if (loadCost[row + count] - gained >= least) continue;
    least = loadCost[row + count] - gained;
    added[load] = count;
  }
  table[larger.count * (field.capacity[point] + 1) + load] = least;
}
