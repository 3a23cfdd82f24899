import { byWorthAPort, cutBound } from "./deepKnapsack.ts";
import type { Items } from "./knapsack.ts";

/** Cells above which the tables of prefixes are not built. */
const cellLimit = 2_000_000;

/**
 * Worth that a knapsack loses at least when an item must be in it, for each item and for things outside it.
 *
 * @param worth    the worth reckoned with so far, no less than the best
 * @param outside  further items, of no worth or less, that could be forced in
 * @param lost     set by item, then by outside item
 * @source prefixes and suffixes of Bellman's table joined; Dantzig's bound where the table would be too large
 */
export function lossWhenTaken(items: Items, capacity: number, worth: number, outside: Items, lost: Float64Array): void {
  const width = capacity + 1;
  if ((items.count + 1) * width > cellLimit) cutLosses(items, capacity, worth, outside, lost);
  else tableLosses(items, width, worth, outside, lost);
}

function cutLosses(items: Items, capacity: number, worth: number, outside: Items, lost: Float64Array): void {
  const order = byWorthAPort(items);
  const loss = (gain: number, ports: number, without: number) =>
    ports > capacity
      ? Number.POSITIVE_INFINITY
      : Math.max(0, worth - gain - cutBound(items, order, capacity - ports, 0, without));
  for (let item = 0; item < items.count; item += 1) {
    lost[item] = loss(items.worth[item], items.ports[item], item);
  }
  for (let item = 0; item < outside.count; item += 1) {
    lost[items.count + item] = loss(outside.worth[item], outside.ports[item], -1);
  }
}

let prefixes = new Float64Array(0);

function tableLosses(items: Items, width: number, worth: number, outside: Items, lost: Float64Array): void {
  if (prefixes.length < (items.count + 1) * width) prefixes = new Float64Array((items.count + 1) * width);
  prefixes.fill(0, 0, width);
  for (let item = 0; item < items.count; item += 1) {
    const row = item * width;
    addItem(prefixes.subarray(row, row + width), prefixes.subarray(row + width, row + 2 * width), items, item);
  }
  const last = items.count * width;
  for (let item = 0; item < outside.count; item += 1) {
    const room = width - 1 - outside.ports[item];
    lost[items.count + item] =
      room < 0 ? Number.POSITIVE_INFINITY : worth - outside.worth[item] - prefixes[last + room];
  }
  let suffix = new Float64Array(width);
  let wider = new Float64Array(width);
  for (let item = items.count - 1; item >= 0; item -= 1) {
    const room = width - 1 - items.ports[item];
    let rest = Number.NEGATIVE_INFINITY;
    for (let held = 0; held <= room; held += 1) {
      const joined = prefixes[item * width + held] + suffix[room - held];
      if (joined > rest) rest = joined;
    }
    lost[item] = worth - items.worth[item] - rest;
    addItem(suffix, wider, items, item);
    [suffix, wider] = [wider, suffix];
  }
}

function addItem(from: Float64Array, into: Float64Array, items: Items, item: number): void {
  const ports = items.ports[item];
  const gain = items.worth[item];
  into.set(from);
  for (let room = from.length - 1; room >= ports; room -= 1) {
    const withItem = from[room - ports] + gain;
    if (withItem > into[room]) into[room] = withItem;
  }
}
