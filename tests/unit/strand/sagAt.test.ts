import { describe, expect, it } from "vitest";
import { sagAtM } from "../../../core/strand/sagAt.ts";

describe("sag along a span", () => {
  it("is nothing at the poles, all at midspan and three quarters of it at the quarter", () => {
    expect([0, 10, 20, 40].map((stationM) => sagAtM(40, 2, 800, stationM))).toEqual([0, 0.375, 0.5, 0]);
  });

  it.each([-0.1, 40.1, Number.NaN])("a station at %s m is not in a span of 40 m", (stationM) => {
    expect(() => sagAtM(40, 2, 800, stationM)).toThrow("stationM must lie in the span of 40 m");
  });
});
