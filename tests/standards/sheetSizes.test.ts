import { describe, expect, it } from "vitest";
import { pensMm } from "../../core/sheets/displayList.ts";
import { ansiB } from "../../core/sheets/paper.ts";
import { planScales } from "../../core/sheets/scale.ts";

describe("sheet sizes and scales", () => {
  // ASME Y14.1, table of sizes as reprinted in drafting references, seen: B is 11 x 17 in, 279 x 432 mm; tolerance: whole mm
  it("ANSI B is 17 in across and 11 in up", () => {
    expect([ansiB.width / 25.4, ansiB.height / 25.4]).toEqual([17, 11]);
    expect([Math.round(ansiB.width), Math.round(ansiB.height)]).toEqual([432, 279]);
  });

  // US engineer's scales, practice: 1 in = 20, 30, 40, 50, 60, 100, 200 ft; a foot is 12 in, exact
  it("US plan scales are those of the engineer's rule", () => {
    const scales = planScales("us").map((one) => [one.text, one.denominator]);
    for (const feet of [20, 30, 40, 50, 60, 100, 200]) expect(scales).toContainEqual([`1 in = ${feet} ft`, feet * 12]);
  });

  // ISO 5455, from memory: 1:500, 1:1000, 1:2000, 1:5000 for plans
  it("metric plan scales hold the series 1-2-5", () => {
    const denominators = planScales("metric").map((one) => one.denominator);
    for (const one of [500, 1000, 2000, 5000]) expect(denominators).toContain(one);
  });

  // ISO 128 series as a drafting reference prints it, seen second-hand: 0.13 0.18 0.25 0.35 0.5 0.7 1.0 1.4 2.0 mm
  it("pens are of the standard series", () => {
    expect(Object.values(pensMm).filter((one) => ![0.13, 0.18, 0.25, 0.35, 0.5].includes(one))).toEqual([]);
  });
});
