import fc from "fast-check";
import munkres from "munkres";
import { describe, expect, it } from "vitest";
import { linearAssignment } from "../../core/assignment/linearAssignment.ts";

const never = Number.POSITIVE_INFINITY;
const side = fc.integer({ min: 1, max: 16 });

describe("an assignment", () => {
  it("costs what another implementation of the method finds", () => {
    fc.assert(
      fc.property(
        side.chain((rows) => table(rows, rows + (rows % 4), fc.integer({ min: -50, max: 50 }))),
        (costs) => {
          const found = linearAssignment(costs);
          if (found.kind !== "assigned") throw new Error("all pairs are allowed");
          expect(new Set(found.columns).size).toBe(costs.length);
          const peer = munkres(costs.map((row) => [...row]));
          expect(found.cost).toBe(peer.reduce((sum, [row, column]) => sum + (costs[row]?.[column] ?? 0), 0));
        },
      ),
      { numRuns: 200, seed: 12 },
    );
  });

  it("is the cheapest of all where pairs are forbidden, and else names units with fewer ports than they are", () => {
    const cost = fc.oneof(fc.integer({ min: 0, max: 20 }), fc.constant(never));
    const seen = { assigned: 0, infeasible: 0 };
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 5 }),
        fc.infiniteStream(cost),
        (rows, columns, stream) => {
          const costs = Array.from({ length: rows }, () => [...stream.take(columns)]);
          const found = linearAssignment(costs);
          const best = cheapestOfAll(costs, new Set());
          seen[found.kind] += 1;
          if (found.kind === "assigned") {
            expect(found.cost).toBe(best);
            return;
          }
          expect(best).toBe(never);
          const allowed = found.rows.flatMap((row) =>
            (costs[row] ?? []).flatMap((one, at) => (one === never ? [] : at)),
          );
          expect([...new Set(allowed)].sort()).toEqual(found.columns);
          expect(found.rows).toHaveLength(found.columns.length + 1);
        },
      ),
      { numRuns: 300, seed: 13 },
    );
    expect(Math.min(seen.assigned, seen.infeasible)).toBeGreaterThan(50);
  });
});

function table(rows: number, columns: number, cost: fc.Arbitrary<number>): fc.Arbitrary<number[][]> {
  const row = fc.array(cost, { minLength: columns, maxLength: columns });
  return fc.array(row, { minLength: rows, maxLength: rows });
}

function cheapestOfAll(costs: readonly (readonly number[])[], taken: ReadonlySet<number>): number {
  const [first, ...rest] = costs;
  if (!first) return 0;
  return Math.min(
    never,
    ...first.map((cost, column) =>
      taken.has(column) ? never : cost + cheapestOfAll(rest, new Set([...taken, column])),
    ),
  );
}
