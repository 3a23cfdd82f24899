import { expect, it } from "vitest";
import { windPressurePa } from "../../../core/strand/windPressure.ts";

const gust = { gustMPerS: 40, heightFactor: 1, spanFactor: 1, shapeFactor: 1, importanceFactor: 1 };

it("pressure goes with the square of the gust and with every factor", () => {
  expect(windPressurePa({ ...gust, gustMPerS: 80 })).toBeCloseTo(4 * windPressurePa(gust), 9);
  expect(windPressurePa({ ...gust, spanFactor: 0.5, heightFactor: 1.2 })).toBeCloseTo(0.6 * windPressurePa(gust), 9);
});

it.each([{ gustMPerS: -1 }, { spanFactor: Number.NaN }, { gustMPerS: 1e200 }])("%j is refused", (part) => {
  expect(() => windPressurePa({ ...gust, ...part })).toThrow(RangeError);
});
