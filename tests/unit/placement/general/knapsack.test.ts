import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { byWorthAPort, cutBound, deepKnapsack } from "../../../../core/placement/general/deepKnapsack.ts";
import {
  emptyTable,
  fillTable,
  type Items,
  readTable,
  roomForItems,
} from "../../../../core/placement/general/knapsack.ts";
import { lossWhenTaken } from "../../../../core/placement/general/losses.ts";

const pairs = fc.array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 0, max: 9 })), { maxLength: 9 });
const capacities = fc.integer({ min: 0, max: 30 });

function itemsOf(of: readonly (readonly [number, number])[]): Items {
  const items = roomForItems(of.length);
  items.count = of.length;
  of.forEach(([worth, ports], item) => {
    items.worth[item] = worth;
    items.ports[item] = ports;
  });
  return items;
}

/** The greatest worth of all fillings that fit, of those that hold an item when one is named; -Infinity where none does. */
function bestOfAll(of: readonly (readonly [number, number])[], capacity: number, held?: number): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let filling = 0; filling < 2 ** of.length; filling += 1) {
    if (held !== undefined && (filling & (2 ** held)) === 0) continue;
    const [worth, ports] = of.reduce(
      ([w, p], [worth, ports], item) => (filling & (2 ** item) ? [w + worth, p + ports] : [w, p]),
      [0, 0],
    );
    if (ports <= capacity) best = Math.max(best, worth);
  }
  return best;
}

const worthOf = (of: readonly (readonly [number, number])[], picked: readonly number[]) =>
  picked.reduce((sum, item) => sum + (of[item]?.[0] ?? Number.NaN), 0);
const portsOf = (of: readonly (readonly [number, number])[], picked: readonly number[]) =>
  picked.reduce((sum, item) => sum + (of[item]?.[1] ?? Number.NaN), 0);

const holds = (property: (of: [number, number][], capacity: number) => void) =>
  fc.assert(fc.property(pairs, capacities, property), { numRuns: 300, seed: 11 });

describe("the knapsack of a point", () => {
  test("has in its table, for every capacity, the best of all fillings, and names units that make it up", () => {
    const table = emptyTable();
    holds((of, capacity) => {
      const items = itemsOf(of);
      fillTable(table, items, capacity);
      for (let room = 0; room <= capacity; room += 1) {
        const into = new Int32Array(of.length);
        const picked = Array.from(into.subarray(0, readTable(table, items, room, into, 0)));
        expect(table.worth[room]).toBe(bestOfAll(of, room));
        expect(worthOf(of, picked)).toBe(table.worth[room]);
        expect(portsOf(of, picked)).toBeLessThanOrEqual(room);
      }
    });
  });

  test("is the same when searched in depth, and never above its bound", () => {
    holds((of, capacity) => {
      const items = itemsOf(of);
      const order = byWorthAPort(items);
      const into = new Int32Array(of.length);
      const { worth, count } = deepKnapsack(items, order, capacity, into, 0);
      const picked = Array.from(into.subarray(0, count));
      expect(worth).toBe(bestOfAll(of, capacity));
      expect(worthOf(of, picked)).toBe(worth);
      expect(portsOf(of, picked)).toBeLessThanOrEqual(capacity);
      expect(cutBound(items, order, capacity)).toBeGreaterThanOrEqual(worth - 1e-9);
    });
  });

  test("loses, when a unit must be in it, what the best filling with that unit is worth less", () => {
    holds((of, capacity) => {
      const items = itemsOf(of);
      const outside = itemsOf([[-3, 2]]);
      const lost = new Float64Array(of.length + 1);
      const best = bestOfAll(of, capacity);
      lossWhenTaken(items, capacity, best, outside, lost);
      of.forEach((_, item) => {
        expect(lost[item]).toBe(best - bestOfAll(of, capacity, item));
      });
      expect(lost[of.length]).toBe(best - bestOfAll([...of, [-3, 2]], capacity, of.length));
    });
  });
});
