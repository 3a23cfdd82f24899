import fc from "fast-check";
import { expect, it } from "vitest";
import { openField } from "../../../core/placement/field.ts";
import { openKnapsacks, pricePoint } from "../../../core/placement/knapsack.ts";
import { terminals } from "../../fixtures/placement/madeStreet.ts";
import { problemOf } from "../../fixtures/placement/problemOf.ts";

it("a point is worth what the best of all sets of its units is worth, and that set is named", () => {
  const unit = fc.record({
    demand: fc.integer({ min: 1, max: 4 }),
    cost: fc.integer({ min: 0, max: 300 }),
    price: fc.integer({ min: 0, max: 900 }),
  });
  fc.assert(
    fc.property(fc.array(unit, { minLength: 1, maxLength: 9 }), (units) => {
      const arcs = units.map(({ demand, cost }) => ({ demand, arcs: [{ point: 0, cost }] }));
      const field = openField(problemOf([{ modules: terminals }], arcs));
      const served = new Int32Array(units.length);
      const price = Float64Array.from(units, (one) => one.price);
      const worth = pricePoint(field, 0, price, served, openKnapsacks(field));
      const worthOf = (isIn: (index: number) => boolean): number => {
        const chosen = units.filter((_, index) => isIn(index));
        const load = chosen.reduce((sum, one) => sum + one.demand, 0);
        const module = load === 0 ? { cost: 0 } : terminals.find((one) => one.capacity >= load);
        return (module?.cost ?? Number.POSITIVE_INFINITY) + chosen.reduce((sum, one) => sum + one.cost - one.price, 0);
      };
      const sets = Array.from({ length: 2 ** units.length }, (_, set) =>
        worthOf((index) => ((set >> index) & 1) === 1),
      );
      expect(worth).toBeCloseTo(Math.min(...sets), 6);
      expect(worthOf((index) => served[index] === 1)).toBeCloseTo(worth, 6);
    }),
    { numRuns: 200, seed: 3 },
  );
});
