import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { costOf, openField } from "../../core/placement/field.ts";
import { keptLayout } from "../../core/placement/keptLayout.ts";
import { partOf } from "../../core/placement/part.ts";
import type { Placement, Problem } from "../../core/placement/problem.ts";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { type EditedStreet, editedStreet, editKinds } from "../fixtures/placement/editedStreet.ts";
import { greedyNearestCost } from "../fixtures/placement/greedyNearest.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import { unitsOf } from "../fixtures/placement/problemOf.ts";

const patient = { elapsedS: () => 0, stopped: () => false };
const hurried = { elapsedS: () => 0, stopped: () => true };
const options = { gap: 0, seed: 1 };

const edit = fc.record({
  street: fc.constantFrom(...Object.values(streetKinds)),
  unitCount: fc.integer({ min: 2, max: 60 }),
  seed: fc.integer({ min: 0, max: 1e6 }),
  kind: fc.constantFrom(...editKinds),
});

/** A street laid out, then edited. */
function holds(property: (edited: EditedStreet, before: Problem) => void, numRuns: number): void {
  fc.assert(
    fc.property(edit, ({ street, unitCount, seed, kind }) => {
      const before = madeStreet({ ...street, unitCount, seed });
      const { pointOf } = solvePlacement(before, patient, options);
      property(editedStreet(before, pointOf, kind, seed), before);
    }),
    { numRuns, seed: 9 },
  );
}

describe("a street laid out again after an edit, from the layout of before", () => {
  test("comes to the same proven cost as from nothing, and to a layout that is what it says", () => {
    let compared = 0;
    holds(({ problem, kept }) => {
      const anew = solvePlacement(problem, patient, options);
      if (anew.unserved.length > 0) return;
      compared += 1;
      const again = solvePlacement(problem, patient, { ...options, kept });
      expect(again.status).toBe("optimal");
      expect(again.cost).toBeCloseTo(anew.cost, 6);
      expect(again.bound).toBeLessThanOrEqual(again.cost);
      expect(costOf(openField(problem), again.pointOf)).toBeCloseTo(again.cost, 6);
      unitsOf(problem).forEach(({ arcs }, unit) => {
        expect(arcs.map((arc) => arc.point)).toContain(again.pointOf[unit]);
      });
    }, 200);
    expect(compared).toBeGreaterThan(180);
  });

  test("even when it is stopped at once is never dearer than what was kept, nor than nearest with room", () => {
    holds(({ problem, kept }) => {
      const { cost, bound, unserved } = solvePlacement(problem, hurried, { ...options, kept });
      if (unserved.length > 0) return;
      expect(cost).toBeLessThanOrEqual(costKept(problem, kept) + 1e-6);
      expect(cost).toBeLessThanOrEqual(greedyNearestCost(openField(problem)) + 1e-6);
      expect(bound).toBeLessThanOrEqual(cost);
    }, 200);
  });

  test("hears of no layout dearer than the one before it", () => {
    holds(({ problem, kept }) => {
      const heard: Placement[] = [];
      solvePlacement(problem, { ...patient, better: (one) => heard.push(one) }, { ...options, kept });
      for (const [index, one] of heard.slice(1).entries())
        expect(one.cost).toBeLessThanOrEqual((heard[index]?.cost ?? 0) + 1e-6);
    }, 60);
  });

  test("moves nothing when nothing was edited, in a moment or with the proof", () => {
    holds((_, problem) => {
      for (const isQuick of [true, false]) {
        const { pointOf } = solvePlacement(problem, patient, options);
        expect(solvePlacement(problem, patient, { ...options, isQuick, kept: pointOf }).pointOf).toEqual(pointOf);
      }
    }, 60);
  });

  test("answers the same twice", () => {
    holds(({ problem, kept }) => {
      const once = solvePlacement(problem, patient, { ...options, kept });
      expect(solvePlacement(problem, patient, { ...options, kept })).toEqual(once);
    }, 30);
  });
});

function costKept(problem: Problem, kept: Int32Array): number {
  const points = Int32Array.from(problem.points, (_, point) => point);
  const units = Int32Array.from(problem.demand, (_, unit) => unit);
  return keptLayout(partOf(problem, points, units), kept).cost;
}
