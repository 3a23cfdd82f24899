import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { words } from "../../../core/sheets/paper/marks.ts";
import { hasGlyphs, textBox, textRuns, textWidthMm } from "../../../core/sheets/paper/measureText.ts";

describe("measuring text for paper", () => {
  it("gives the widths that the font files give when they are read again", () => {
    const fresh = execFileSync(process.execPath, ["assets/fonts/makeMetrics.mjs", "--print"], { encoding: "utf8" });
    expect(readFileSync("core/sheets/paper/fontMetrics.ts", "utf8")).toBe(fresh);
  });

  it("makes figures of one width, so that columns of numbers line up", () => {
    for (const face of ["narrow", "narrowBold", "plain", "plainBold"] as const) {
      const widths = [..."0123456789"].map((one) => textWidthMm(one, face, 2.2));
      expect(new Set(widths).size).toBe(1);
    }
  });

  it("grows a text in proportion to its height", () => {
    expect(textWidthMm("Terminal T12", "narrow", 4)).toBeCloseTo(2 * textWidthMm("Terminal T12", "narrow", 2), 9);
  });

  it("takes what a face lacks from the symbols face and goes back", () => {
    expect(textRuns("a ≤ b", "plain", 2.2).map((run) => [run.font, run.text])).toEqual([
      ["plain", "a "],
      ["symbols", "≤"],
      ["plain", " b"],
    ]);
  });

  it("draws the replacement sign for what no face has, and a space for a line end", () => {
    expect(textRuns("漢\n", "plain", 2).map((run) => run.text)).toEqual(["\uFFFD", " "]);
    expect(hasGlyphs("漢", "plain")).toBe(false);
    expect(hasGlyphs("Peña ≥ 3 Ω → Łódź", "narrow")).toBe(true);
  });

  it("boxes a turned text about its anchor", () => {
    const across = textBox(words("M12", [50, 50], { align: "middle" }));
    const upright = textBox(words("M12", [50, 50], { align: "middle", turnRad: Math.PI / 2 }));
    expect(upright.width).toBe(across.width);
    expect(upright.centre[0]).toBeCloseTo(50 - (across.centre[1] - 50), 9);
    expect(upright.centre[1]).toBeCloseTo(50, 9);
  });

  it("leaves room for the accent of a capital", () => {
    expect(textBox(words("É", [0, 0])).height).toBeGreaterThan(textBox(words("E", [0, 0])).height);
  });
});
