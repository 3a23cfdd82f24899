import { expect, it } from "vitest";
import { changeOfState } from "../../../core/strand/changeOfState.ts";
import { rowMeans, rowStringingN, type SlippingSpans, slippingSpans } from "../../../core/strand/slippingSpans.ts";

const span = {
  spanM: 45,
  riseM: 6,
  from: { weightNPerM: 3 },
  to: { weightNPerM: 12, pointLoads: [{ atM: 1, weightN: 60 }] },
};
const row: SlippingSpans = {
  spans: [span],
  axialStiffnessN: 3.76e6,
  expansionPerDegC: 1.15e-5,
  horizontalN: 1500,
  fromDegC: 15,
  toDegC: -10,
};

function tensionN(one: SlippingSpans): number {
  const state = slippingSpans(one);
  if (!state.ok) throw new Error(state.fault.what);
  return state.value.horizontalN;
}

it("a row of one span changes as that span does by itself", () => {
  const alone = changeOfState({
    spanM: span.spanM,
    riseM: span.riseM,
    axialStiffnessN: row.axialStiffnessN,
    expansionPerDegC: row.expansionPerDegC,
    from: { ...span.from, temperatureDegC: 15, horizontalN: 1500 },
    to: { ...span.to, temperatureDegC: -10 },
  });
  if (!alone.ok) throw new Error(alone.fault.what);
  expect(tensionN(row)).toBeCloseTo(alone.value.horizontalN, 6);
});

it("a row of like spans changes as each of them, and ice on one of two pulls less than on both", () => {
  expect(tensionN({ ...row, spans: [span, span, span] })).toBeCloseTo(tensionN(row), 6);
  const half = tensionN({ ...row, spans: [span, { ...span, to: span.from }] });
  expect(half).toBeLessThan(tensionN(row));
  expect(half).toBeGreaterThan(1500);
});

it("level spans under one load mean w^2 R^2 / 12, all of which grows by warmth", () => {
  const load = { weightNPerM: 3 };
  const spans = [30, 45, 60].map((spanM) => ({ spanM, riseM: 0, from: load, to: load }));
  const rulingSquaredM2 = (30 ** 3 + 45 ** 3 + 60 ** 3) / 135;
  const { fromN2, toN2, warmthFrac } = rowMeans(spans);
  expect(fromN2).toBeCloseTo((9 * rulingSquaredM2) / 12, 9);
  expect([toN2, warmthFrac]).toEqual([fromN2, 1]);
});

it("one span is strung to its own sag, weighed along its slope", () => {
  expect(rowStringingN([span], 0.01)).toBeCloseTo((3 * Math.hypot(45, 6)) / 0.08, 9);
});

it("an empty row, and one with a span that cannot hang, are no rows", () => {
  expect(() => slippingSpans({ ...row, spans: [] })).toThrow(RangeError);
  expect(() => rowStringingN([], 0.01)).toThrow(RangeError);
  expect(() => slippingSpans({ ...row, spans: [{ ...span, spanM: Number.NaN }] })).toThrow(RangeError);
  expect(() => slippingSpans({ ...row, horizontalN: 0 })).toThrow(RangeError);
});
