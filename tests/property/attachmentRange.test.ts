import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attachmentRange } from "../../core/jointpole/attachmentRange.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { foundAt, jointPole } from "./jointPole.ts";

function rangeOf(route: Route) {
  const range = attachmentRange(openPlant(route), "pole-2");
  if (range.kind === "unknown") throw new Error(range.why);
  return range;
}

describe("the heights that a joint pole leaves our strand", () => {
  it("give no finding of any rule that hangs on the height, anywhere between their ends", () => {
    fc.assert(
      fc.property(jointPole, fc.double({ min: 0, max: 1, noNaN: true }), (route, part) => {
        for (const { fromM, toM } of rangeOf(route).free) {
          const heightM = fromM + part * (Math.min(toM, fromM + 10) - fromM);
          if (heightM > 0) expect(foundAt(route, heightM).map((one) => one.message)).toEqual([]);
        }
      }),
      { numRuns: 250 },
    );
  });

  it("give a finding of the very rule that sets an end, 1 mm beyond it", () => {
    fc.assert(
      fc.property(jointPole, (route) => {
        for (const { fromM, toM, from, to } of rangeOf(route).free) {
          if (from) expect(foundAt(route, fromM - 0.001).map((one) => one.ruleId)).toContain(from.ruleId);
          if (to) expect(foundAt(route, toM + 0.001).map((one) => one.ruleId)).toContain(to.ruleId);
        }
      }),
      { numRuns: 250 },
    );
  });

  it("leave none out: wherever the rules find nothing, the height is among them", () => {
    fc.assert(
      fc.property(jointPole, fc.double({ min: 4, max: 9, noNaN: true }), (route, heightM) => {
        const { free } = rangeOf(route);
        const isFree = free.some(({ fromM, toM }) => fromM - 1e-6 <= heightM && heightM <= toM + 1e-6);
        expect(isFree || foundAt(route, heightM).length > 0).toBe(true);
      }),
      { numRuns: 250 },
    );
  });

  it("do not hang on where our strand is attached now", () => {
    fc.assert(
      fc.property(jointPole, fc.double({ min: 4, max: 9, noNaN: true }), (route, heightM) => {
        const ends = (one: Route) => rangeOf(one).free.flatMap(({ fromM, toM }) => [fromM, toM]);
        const moved = { ...route, attachment: new Map(route.attachment) };
        const ours = moved.attachment.get("strand-2");
        if (ours) moved.attachment.set("strand-2", { ...ours, heightM });
        for (const [index, end] of ends(moved).entries()) {
          const was = ends(route)[index] ?? Number.NaN;
          expect(end === was || Math.abs(end - was) < 1e-9).toBe(true);
        }
      }),
      { numRuns: 200 },
    );
  });
});
