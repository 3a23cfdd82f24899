import { describe, expect, it } from "vitest";
import { linearAssignment } from "../../../core/assignment/linearAssignment.ts";

const never = Number.POSITIVE_INFINITY;

describe("units on ports at the least cost", () => {
  it("a unit gives way to another that would lose more", () => {
    expect(
      linearAssignment([
        [1, 2],
        [1, 9],
      ]),
    ).toEqual({ kind: "assigned", columns: [1, 0], cost: 3 });
  });

  it("ports may be left over", () => {
    expect(linearAssignment([[5, 4, 7]])).toEqual({ kind: "assigned", columns: [1], cost: 4 });
  });

  it("a pair that may not be is never chosen, however dear the rest", () => {
    expect(
      linearAssignment([
        [never, 1000],
        [1, 1],
      ]),
    ).toEqual({ kind: "assigned", columns: [1, 0], cost: 1001 });
  });

  it("nobody to place costs nothing", () => {
    expect(linearAssignment([])).toEqual({ kind: "assigned", columns: [], cost: 0 });
  });
});

describe("units that cannot all have a port", () => {
  it("are named with the ports they share", () => {
    expect(
      linearAssignment([
        [1, 2, 3],
        [never, 1, never],
        [never, 1, never],
      ]),
    ).toEqual({ kind: "infeasible", rows: [1, 2], columns: [1] });
  });

  it("are all of them where there are fewer ports than units", () => {
    expect(linearAssignment([[1], [2]])).toEqual({ kind: "infeasible", rows: [0, 1], columns: [0] });
  });

  it("is one alone where it may have no port at all", () => {
    expect(linearAssignment([[never, never]])).toEqual({ kind: "infeasible", rows: [0], columns: [] });
  });
});

it("a ragged table and a cost that is no number are refused", () => {
  expect(() => linearAssignment([[1, 2], [1]])).toThrow(RangeError);
  expect(() => linearAssignment([[Number.NaN]])).toThrow("a cost must be a number or infinity");
});
