import type { Items } from "./knapsack.ts";

/** Steps after which the search of one knapsack is given up and its bound taken instead. */
const stepLimit = 20_000;

/** The items by falling worth a port. */
export function byWorthAPort(items: Items): Int32Array {
  const rate = items.worth.map((worth, item) => worth / Math.max(items.ports[item], 1e-9));
  return Int32Array.from({ length: items.count }, (_, item) => item).sort((a, b) => rate[b] - rate[a] || a - b);
}

/**
 * Most that any filling can be worth: items by falling worth a port, the last one cut to fit.
 *
 * @param without an item that is not to be used; -1 for none
 * @source Dantzig's bound
 */
export function cutBound(items: Items, order: Int32Array, capacity: number, from = 0, without = -1): number {
  let room = capacity;
  let worth = 0;
  for (let at = from; at < order.length; at += 1) {
    const item = order[at];
    if (item === without) continue;
    const ports = items.ports[item];
    const gain = items.worth[item];
    if (ports > room) return worth + (gain * room) / ports;
    room -= ports;
    worth += gain;
  }
  return worth;
}

/**
 * The 0/1 knapsack by depth first search, for capacities too large for a table.
 *
 * @param order  items by falling worth a port
 * @returns how many items were written to `into` from `start`, and a worth that no filling exceeds: that of the items written,
 *   unless the search was given up
 * @source Horowitz and Sahni 1974, the search of largest rates first, cut by Dantzig's bound
 */
export function deepKnapsack(
  items: Items,
  order: Int32Array,
  capacity: number,
  into: Int32Array,
  start: number,
): { readonly count: number; readonly worth: number } {
  const most = cutBound(items, order, capacity);
  const path: number[] = [];
  let room = capacity;
  let worth = 0;
  let best = -1;
  let count = 0;
  let at = 0;
  for (let step = 0; ; step += 1) {
    if (step === stepLimit) return { count, worth: most };
    // forward: take all that fits, as long as the rest can still beat the best
    let hopeful = true;
    while (at < order.length) {
      if (worth + cutBound(items, order, room, at) <= best) {
        hopeful = false;
        break;
      }
      const item = order[at];
      if (items.ports[item] <= room) {
        path.push(at);
        room -= items.ports[item];
        worth += items.worth[item];
      }
      at += 1;
    }
    if (hopeful && worth > best) {
      best = worth;
      count = path.length;
      path.forEach((place, k) => {
        into[start + k] = order[place];
      });
    }
    // back: leave out the last item taken
    const last = path.pop();
    if (last === undefined) return { count, worth: Math.max(best, 0) };
    const item = order[last];
    room += items.ports[item];
    worth -= items.worth[item];
    at = last + 1;
  }
}
