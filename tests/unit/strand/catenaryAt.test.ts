import { expect, it } from "vitest";
import { catenarySpan } from "../../../core/strand/catenary.ts";
import { catenarySagAtM } from "../../../core/strand/catenaryAt.ts";

const span = { spanM: 40, riseM: 6, weightNPerM: 3, horizontalN: 500 };

it("at midspan it is the sag of the span, at the supports nothing", () => {
  expect(catenarySagAtM(span, 20)).toBeCloseTo(catenarySpan(span).sagM, 12);
  expect(catenarySagAtM(span, 0)).toBeCloseTo(0, 12);
  expect(catenarySagAtM(span, 40)).toBeCloseTo(0, 12);
});

it("seen from the other pole the span hangs the same", () => {
  expect(catenarySagAtM({ ...span, riseM: -6 }, 31)).toBeCloseTo(catenarySagAtM(span, 9), 12);
});

it.each([
  [span, 41],
  [span, Number.NaN],
  [{ ...span, weightNPerM: 0 }, 20],
  [{ ...span, horizontalN: 0.001 }, 20],
])("a station outside, or a span too slack to figure, is refused", (hanging, atM) => {
  expect(() => catenarySagAtM(hanging, atM)).toThrow(RangeError);
});
