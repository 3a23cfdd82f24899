import { expect, it } from "vitest";
import { returnWaveS, sagByReturnWaveM } from "../../../core/strand/returnWave.ts";

it("the sag goes with the square of the time of one return", () => {
  expect(sagByReturnWaveM(6, 5)).toBeCloseTo(sagByReturnWaveM(1.2, 1), 12);
  expect(sagByReturnWaveM(2, 1)).toBeCloseTo(4 * sagByReturnWaveM(1, 1), 12);
});

it("a slacker span returns the wave later", () => {
  expect(returnWaveS(0.5, 10)).toBeGreaterThan(returnWaveS(0.4, 10));
});

it.each([
  [0, 1],
  [Number.NaN, 1],
  [1, 0],
  [1, 1.5],
])("%d s for %d returns is no measurement", (timeS, returnCount) => {
  expect(() => sagByReturnWaveM(timeS, returnCount)).toThrow(RangeError);
  expect(() => returnWaveS(timeS, returnCount)).toThrow(RangeError);
});
