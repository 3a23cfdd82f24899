import { describe, expect, it } from "vitest";
import { colourAt, fiberPlace } from "../../../core/fiber/colourCode.ts";

describe("colours of fibers and tubes", () => {
  it("a tracer is written behind a stroke in the short form", () => {
    expect([2, 14, 20, 26].map((position) => colourAt(position).abbreviation)).toEqual([
      "OR",
      "OR/BK",
      "BK/YL",
      "OR/BK/BK",
    ]);
  });

  it.each([0, -1, 1.5, 145, Number.NaN])("there is no colour at position %s", (position) => {
    expect(() => colourAt(position)).toThrow(RangeError);
  });

  it("a tube of 24 fibers uses the second dozen of colours", () => {
    expect(fiberPlace(48, 24)).toEqual({
      tube: 2,
      tubeColour: "orange",
      fiberInTube: 24,
      fiberColour: "aqua with black tracer",
    });
  });

  it.each([
    [0, 12],
    [1.5, 12],
    [1, 0],
    [Number.NaN, 12],
    [1, 2.5],
    [1729, 12],
  ])("fiber %s in tubes of %s is refused", (fiber, fibersPerTube) => {
    expect(() => fiberPlace(fiber, fibersPerTube)).toThrow(RangeError);
  });
});
