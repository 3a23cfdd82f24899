import { describe, expect, test } from "vitest";
import { guyShares } from "../../../core/plant/guyShares.ts";

const eastward = { eastN: 1000, northN: 0 };
const rounded = (loads: readonly number[]) => loads.map((load) => Math.round(load));

describe("guys that hold a level pull", () => {
  test("one straight against it holds all of it, one beside the line holds none", () => {
    expect(rounded(guyShares(eastward, [Math.PI, Math.PI / 2]))).toEqual([1000, 0]);
  });

  test("two side by side share it", () => {
    expect(rounded(guyShares(eastward, [Math.PI - 0.1, Math.PI + 0.1]))).toEqual([502, 502].map(() => 498));
  });

  test("two that stand wide hold it by equilibrium, more than half each", () => {
    expect(rounded(guyShares(eastward, [Math.PI - Math.PI / 3, Math.PI + Math.PI / 3]))).toEqual([1000, 1000]);
  });

  test("at a corner a guy against each span holds that span's pull", () => {
    const corner = { eastN: 700, northN: 500 };
    expect(rounded(guyShares(corner, [Math.PI, -Math.PI / 2]))).toEqual([700, 500]);
  });

  test("one that stands with the pull holds nothing", () => {
    expect(guyShares(eastward, [0])).toEqual([0]);
  });
});
