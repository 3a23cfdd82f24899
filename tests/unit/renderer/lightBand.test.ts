import { describe, expect, test } from "vitest";
import { bandInks, lightBands, marginMark, terminalBand } from "../../../renderer/balance/lightBand.ts";
import { bandWords } from "../../../renderer/balance/words.ts";

const light = (marginDb: number, overloadDb: number, darkCount = 0) => ({
  darkCount,
  worst: { dropId: "drop-1", marginDb, way: "up" as const },
  overloadDb,
});

describe("the scale of the light", () => {
  test.each([
    [-0.1, 5, "over"],
    [0, 5, "tight"],
    [1, 5, "near"],
    [3, 5, "good"],
    [6, 5, "ample"],
    [6, -0.1, "overload"],
    [-1, -1, "over"],
  ] as const)("a margin of %d dB, %d dB over the least, is %s", (marginDb, overloadDb, band) => {
    expect(terminalBand(light(marginDb, overloadDb))).toBe(band);
  });

  test("a unit without light makes its terminal dark, and a terminal without units has no band", () => {
    expect(terminalBand(light(6, 5, 1))).toBe("dark");
    expect(terminalBand({ darkCount: 0, worst: null, overloadDb: null })).toBeNull();
  });

  test("no band is told by its ink alone, and its sign can be read on it", () => {
    expect(new Set(lightBands.map((one) => bandWords[one].sign)).size).toBe(lightBands.length);
    for (const band of lightBands) {
      const { fill, on } = bandInks[band];
      expect(contrast(fill, on), band).toBeGreaterThanOrEqual(4.5);
      for (const ground of ["#fbfaf6", "#15191e"]) expect(contrast(fill, ground), band).toBeGreaterThanOrEqual(2.6);
    }
  });

  test("a margin is marked with its way, too much light as what is over", () => {
    expect(marginMark(2.44, "down", 5)).toBe("2.4 ↓");
    expect(marginMark(-0.5, "up", 5)).toBe("-0.5 ↑");
    expect(marginMark(12, "up", -1.25)).toBe("+1.3");
  });
});

/** Contrast of two colours as WCAG 2 reckons it. */
function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
