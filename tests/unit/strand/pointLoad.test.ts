import { expect, it } from "vitest";
import { requireInSpan, requirePointLoads } from "../../../core/strand/pointLoad.ts";

it("loads at either support and between are taken", () => {
  expect(() =>
    requirePointLoads(
      [
        { atM: 0, weightN: 0 },
        { atM: 40, weightN: 60 },
      ],
      40,
    ),
  ).not.toThrow();
});

it.each([
  { atM: -0.1, weightN: 60 },
  { atM: 40.1, weightN: 60 },
  { atM: Number.NaN, weightN: 60 },
  { atM: 1, weightN: -1 },
  { atM: 1, weightN: Number.POSITIVE_INFINITY },
])("a load that cannot hang in the span is refused", (load) => {
  expect(() => requirePointLoads([load], 40)).toThrow(RangeError);
});

it("a station outside the span is named", () => {
  expect(() => requireInSpan("atM", 41, 40)).toThrow("atM must lie in the span of 40 m, not at 41");
});
