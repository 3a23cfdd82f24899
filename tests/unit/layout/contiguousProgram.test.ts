import { expect, test } from "vitest";
import { contiguousProgram, type Facility } from "../../../core/layout/contiguousProgram.ts";
import { seeded } from "../../fixtures/layout/townRoute.ts";

/** Cost of holding n units: 10 for up to 2, 15 for up to 4. */
const openCosts = [0, 10, 10, 15, 15];

function facility(costs: readonly (number | null)[]): Facility {
  return { arcs: costs.flatMap((cost, unit) => (cost === null ? [] : [{ unit, cost }])), openCosts };
}

test("one large terminal is hung where it beats two small ones", () => {
  expect(contiguousProgram(4, [facility([1, 1, 3, 3]), facility([3, 3, 1, 1])])).toEqual([0, 0, 0, 0]);
});

test("two small terminals are hung where long drops cost more than a terminal", () => {
  expect(contiguousProgram(4, [facility([1, 1, 9, 9]), facility([9, 9, 1, 1])])).toEqual([0, 0, 1, 1]);
});

test("a unit out of everybody's reach is left out, the others are served", () => {
  expect(contiguousProgram(3, [facility([1, null, null]), facility([null, null, 1])])).toEqual([0, -1, 1]);
});

test("serving one unit more is worth any drop", () => {
  expect(contiguousProgram(5, [facility([1, 1, 1, 1, 900]), facility([900, 900, 900, 900, 900])])).not.toContain(-1);
});

test("there is nothing to choose where there are no units", () => {
  expect(contiguousProgram(0, [facility([])])).toEqual([]);
});

test("it is as cheap as the best of all layouts on streets of equal setback", () => {
  const random = seeded(5);
  for (let round = 0; round < 60; round += 1) {
    const units = Array.from({ length: 6 }, () => random() * 60).sort((a, b) => a - b);
    const facilities = [5, 20, 35, 50].map((atM) => facility(units.map((unitM) => Math.hypot(unitM - atM, 12))));
    expect(costOf(contiguousProgram(6, facilities), facilities)).toBeCloseTo(leastCost(6, facilities), 9);
  }
});

function costOf(chosen: readonly number[], facilities: readonly Facility[]): number {
  const loads = facilities.map((_, index) => chosen.filter((one) => one === index).length);
  const drops = chosen.reduce((sum, index, unit) => sum + (facilities[index]?.arcs[unit]?.cost ?? Number.NaN), 0);
  const open = loads.map((load, index) => facilities[index]?.openCosts[load] ?? Number.POSITIVE_INFINITY);
  return open.reduce((sum, cost) => sum + cost, drops);
}

/** Every assignment tried. */
function leastCost(unitCount: number, facilities: readonly Facility[], chosen: readonly number[] = []): number {
  if (chosen.length === unitCount) return costOf(chosen, facilities);
  return Math.min(...facilities.map((_, index) => leastCost(unitCount, facilities, [...chosen, index])));
}
