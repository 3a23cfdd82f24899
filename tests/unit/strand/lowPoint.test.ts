import { expect, it } from "vitest";
import { catenaryLowPoint, parabolicLowPoint } from "../../../core/strand/lowPoint.ts";

const span = { spanM: 40, riseM: 0, weightNPerM: 3, horizontalN: 1500 };

it("a level span hangs its whole sag below its supports", () => {
  expect(parabolicLowPoint(span)).toEqual({ lowPointM: 20, belowLowerM: 0.4 });
  expect(catenaryLowPoint(span).belowLowerM).toBeCloseTo(0.4, 3);
});

it("a steep span hangs nothing below its lower support", () => {
  expect(parabolicLowPoint({ ...span, riseM: 5 }).belowLowerM).toBe(0);
  expect(catenaryLowPoint({ ...span, riseM: -5 }).belowLowerM).toBe(0);
  expect(catenaryLowPoint({ ...span, riseM: -5 }).lowPointM).toBeLessThan(0);
});
