import fc from "fast-check";
import { minCostFlow } from "min-cost-flow";
import { describe, expect, it } from "vitest";
import { drained } from "../../core/assignment/drained.ts";
import { type Choice, evenFill, type Place, unevenness } from "../../core/assignment/evenFill.ts";

type Town = {
  readonly places: readonly Place[];
  readonly choices: readonly (readonly Choice[])[];
  readonly present: readonly number[];
};

/** Terminals in a row; units near their own one may have its neighbours too. */
const town: fc.Arbitrary<Town> = fc
  .array(fc.record({ size: fc.constantFrom(4, 8, 12), fixedCount: fc.integer({ min: 0, max: 2 }) }), {
    minLength: 2,
    maxLength: 6,
  })
  .chain((sides) => {
    const unit = fc.record({
      home: fc.integer({ min: 0, max: sides.length - 1 }),
      atM: fc.integer({ min: 0, max: 40 }),
    });
    return fc.array(unit, { maxLength: 24 }).map((units) => townOf(sides, units));
  });

function townOf(
  sides: readonly Pick<Place, "size" | "fixedCount">[],
  units: readonly { readonly home: number; readonly atM: number }[],
): Town {
  const load = sides.map(() => 0);
  const housed = units.filter(({ home }) => {
    const { size, fixedCount } = sides[home] ?? { size: 0, fixedCount: 0 };
    if ((load[home] ?? 0) >= size - fixedCount) return false;
    load[home] = (load[home] ?? 0) + 1;
    return true;
  });
  return {
    places: sides.map((one) => ({ ...one, capacity: one.size - one.fixedCount })),
    choices: housed.map(({ home, atM }) =>
      [home - 1, home, home + 1].flatMap((place) =>
        sides[place] ? [{ place, cost: Math.abs(atM + 20 * (place - home)) }] : [],
      ),
    ),
    present: housed.map((one) => one.home),
  };
}

describe("evening the fill of terminals", () => {
  it("costs what another implementation of minimum-cost flow finds", () => {
    let moved = 0;
    fc.assert(
      fc.property(town, fc.constantFrom(0, 24, 240), ({ places, choices, present }, weight) => {
        const found = drained(evenFill(present, choices, places, weight));
        if (found.some((place, unit) => place !== present[unit])) moved += 1;
        expect(sumOf(found, choices, places, weight)).toBeCloseTo(peerSum(choices, places, weight), 6);
      }),
      { numRuns: 150, seed: 31 },
    );
    expect(moved).toBeGreaterThan(50);
  });

  it("keeps every unit within its choices and every place within what it may hold, and is never less even for more weight", () => {
    fc.assert(
      fc.property(town, ({ places, choices, present }) => {
        const measures = [0, 1, 10, 100, 1000].map((weight) => {
          const found = drained(evenFill(present, choices, places, weight));
          const loads = loadsOf(found, places);
          for (const [place, load] of loads.entries()) expect(load).toBeLessThanOrEqual(places[place]?.capacity ?? 0);
          for (const [unit, place] of found.entries()) expect(choices[unit]?.map((one) => one.place)).toContain(place);
          return unevenness(loads, places);
        });
        for (const [index, measure] of measures.entries())
          expect(measure).toBeLessThanOrEqual((measures[index - 1] ?? Number.POSITIVE_INFINITY) + 1e-9);
      }),
      { numRuns: 150, seed: 32 },
    );
  });
});

function loadsOf(found: readonly number[], places: readonly Place[]): number[] {
  return places.map((_, place) => found.filter((one) => one === place).length);
}

function sumOf(
  found: readonly number[],
  choices: readonly (readonly Choice[])[],
  places: readonly Place[],
  weight: number,
): number {
  const cost = found.reduce(
    (sum, place, unit) => sum + (choices[unit]?.find((one) => one.place === place)?.cost ?? Number.NaN),
    0,
  );
  return cost + weight * unevenness(loadsOf(found, places), places);
}

/** The same sum by a flow from units through places to one port after the other, each dearer than the one before. */
function peerSum(choices: readonly (readonly Choice[])[], places: readonly Place[], weight: number): number {
  const edges = [
    ...choices.flatMap((own, unit) => [
      { from: "SOURCE", to: `u${unit}`, capacity: 1, cost: 0 },
      ...own.map((one) => ({ from: `u${unit}`, to: `p${one.place}`, capacity: 1, cost: one.cost })),
    ]),
    ...places.flatMap(({ capacity, fixedCount, size }, place) =>
      Array.from({ length: capacity }, (_, index) => {
        const cost = (weight * (2 * (fixedCount + index) + 1)) / size;
        return [
          { from: `p${place}`, to: `p${place}-${index}`, capacity: 1, cost },
          { from: `p${place}-${index}`, to: "SINK", capacity: 1, cost: 0 },
        ];
      }).flat(),
    ),
  ];
  const start = weight * unevenness([], places);
  if (choices.length === 0) return start;
  return minCostFlow(edges).reduce((sum, edge) => sum + edge.flow * edge.cost, start);
}
