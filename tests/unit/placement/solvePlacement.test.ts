import { describe, expect, it } from "vitest";
import type { Placement } from "../../../core/placement/problem.ts";
import { solvePlacement } from "../../../core/placement/solvePlacement.ts";
import { madeStreet, streetKinds, terminals } from "../../fixtures/placement/madeStreet.ts";
import { problemOf, type WrittenUnit } from "../../fixtures/placement/problemOf.ts";

const patient = { elapsedS: () => 0, stopped: () => false };

function solve(units: readonly WrittenUnit[], pointCount: number) {
  const points = Array.from({ length: pointCount }, () => ({ modules: terminals }));
  return solvePlacement(problemOf(points, units), patient, { gap: 0, seed: 1 });
}

const at = (point: number, cost = 100) => ({ point, cost });

describe("a unit that cannot be served is named with the reason, and the others are laid out", () => {
  it("no point within reach", () => {
    expect(
      solve(
        [
          { demand: 1, arcs: [at(0)] },
          { demand: 1, arcs: [] },
        ],
        1,
      ),
    ).toMatchObject({
      status: "infeasible",
      cost: 1000,
      bound: 1000,
      unserved: [{ unit: 1, reason: "no place is within reach" }],
    });
  });

  it("more ports asked than the largest terminal holds", () => {
    expect(
      solve(
        [
          { demand: 15, arcs: [at(0)] },
          { demand: 14, arcs: [at(0)] },
        ],
        1,
      ),
    ).toMatchObject({
      status: "infeasible",
      cost: 1600,
      unserved: [{ unit: 0, reason: "it asks for 15 ports; the largest terminal within reach holds 14" }],
    });
  });

  it("more ports asked than all points within reach hold", () => {
    const units = Array.from({ length: 29 }, () => ({ demand: 1, arcs: [at(0), at(1)] }));
    const { status, unserved, pointOf } = solve(units, 3);
    expect(status).toBe("infeasible");
    expect([...pointOf].filter((point) => point === -1)).toHaveLength(1);
    expect(unserved.map((one) => one.reason)).toEqual([
      "it and 28 more ask for 29 ports of the 2 places within their reach, which hold 28",
    ]);
  });

  it("ports enough, but no way to keep each unit whole", () => {
    const units = Array.from({ length: 3 }, () => ({ demand: 9, arcs: [at(0), at(1)] }));
    expect(solve(units, 2).unserved.map((one) => one.reason)).toEqual([
      "no layout was found that holds it beside the others",
    ]);
  });
});

it("a route without units costs nothing", () => {
  expect(solve([], 3)).toMatchObject({ status: "optimal", cost: 0, bound: 0, unserved: [] });
});

describe("a search that is watched", () => {
  const problem = madeStreet({ ...streetKinds.crowded, unitCount: 300, seed: 4 });

  it("has a first layout of every part even when it is stopped at once", () => {
    const { pointOf, cost, status } = solvePlacement(
      problem,
      { elapsedS: () => 0, stopped: () => true },
      { gap: 0, seed: 1 },
    );
    expect(pointOf).not.toContain(-1);
    expect(cost).toBeGreaterThan(0);
    expect(status).toBe("bounded");
  });

  it("tells of layouts that never grow dearer and bounds that never fall", () => {
    const heard: Placement[] = [];
    const solved = solvePlacement(problem, { ...patient, better: (one) => heard.push(one) }, { gap: 0, seed: 1 });
    expect(heard.length).toBeGreaterThan(3);
    for (const [index, one] of heard.slice(1).entries()) {
      expect(one.cost).toBeLessThanOrEqual(heard[index]?.cost ?? 0);
      expect(one.bound).toBeGreaterThanOrEqual(heard[index]?.bound ?? 0);
    }
    expect(solved).toMatchObject({ status: "optimal", bound: solved.cost });
  });

  it("ends as soon as the gap asked for is reached", () => {
    const { cost, bound } = solvePlacement(problem, patient, { gap: 0.01, seed: 1 });
    expect((cost - bound) / cost).toBeLessThanOrEqual(0.01);
    expect(bound).toBeLessThan(cost);
  });

  it("answers the same twice", () => {
    const once = solvePlacement(problem, patient, { gap: 0, seed: 1 });
    expect(solvePlacement(problem, patient, { gap: 0, seed: 1 })).toEqual(once);
  });
});
