import { describe, expect, it } from "vitest";
import { pensMm } from "../../core/sheets/paper/displayList.ts";
import { type PaperName, paperOf } from "../../core/sheets/paper/paper.ts";
import { planScales } from "../../core/sheets/paper/scale.ts";

describe("sheet sizes and scales", () => {
  // ASME Y14.1, table of sizes as reprinted in drafting references, seen: 8.5 x 11, 11 x 17, 17 x 22, 22 x 34 in; tolerance: 1e-9 in
  it.each<[PaperName, number, number]>([
    ["ANSI A", 11, 8.5],
    ["ANSI B", 17, 11],
    ["ANSI C", 22, 17],
    ["ANSI D", 34, 22],
  ])("%s is %d in across and %d in up", (name, across, up) => {
    const { width, height } = paperOf(name).sizeMm;
    expect(width / 25.4).toBeCloseTo(across, 9);
    expect(height / 25.4).toBeCloseTo(up, 9);
  });

  // ISO 216, from memory: A0 is 1 m2 with sides as 1 to the root of 2; each next size is half of it, cut to whole mm; tolerance: 1 mm
  it.each<[PaperName, number]>([
    ["A1", 1],
    ["A2", 2],
    ["A3", 3],
    ["A4", 4],
  ])("%s is A0 halved %d times", (name, times) => {
    const { width, height } = paperOf(name).sizeMm;
    const longM = 2 ** 0.25 / Math.SQRT2 ** times;
    expect(Math.abs(width - longM * 1000)).toBeLessThan(1);
    expect(Math.abs(height - (longM * 1000) / Math.SQRT2)).toBeLessThan(1);
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
    expect(Object.values(pensMm).filter((one) => ![0.13, 0.18, 0.25, 0.35, 0.5, 0.7].includes(one))).toEqual([]);
  });
});
