import { expect, it } from "vitest";
import { clampedSpansTopic } from "../../../core/calc/clampedSpansTopic.ts";

const row = {
  areaM2: 2.27e-5,
  modulusPa: 1.655e11,
  expansionPerC: 1.152e-5,
  from: { weightNPerM: 3, temperatureC: 15 },
};
const spans = [
  { spanM: 30, horizontalN: 1500 },
  { spanM: 50, horizontalN: 1500 },
];

it("as strung no pole is pulled either way", () => {
  expect(clampedSpansTopic.run({ ...row, to: row.from, spans })).toEqual({
    ok: true,
    value: {
      spans: [
        { horizontalN: expect.closeTo(1500, 6), sagM: expect.closeTo(0.225, 9) },
        { horizontalN: expect.closeTo(1500, 6), sagM: expect.closeTo(0.625, 9) },
      ],
      poleDifferencesN: [expect.closeTo(0, 6)],
    },
  });
});

it("in frost the shorter span pulls harder, so the pole is drawn back towards it", () => {
  const frost = clampedSpansTopic.run({ ...row, to: { weightNPerM: 3, temperatureC: -20 }, spans });
  expect(frost).toMatchObject({ ok: true });
  const { poleDifferencesN } = Object(frost).value;
  expect(poleDifferencesN[0]).toBeLessThan(-50);
});

it("a span whose tension does not settle is said so", () => {
  expect(clampedSpansTopic.run({ ...row, to: row.from, spans: [{ spanM: 1e200, horizontalN: 1 }] })).toMatchObject({
    fault: { code: "not-settled" },
  });
});
