import { expect, it } from "vitest";
import type { ChangeOfState } from "../../../core/strand/changeOfState.ts";
import { clampedSpans } from "../../../core/strand/clampedSpans.ts";

const span = (spanM: number): ChangeOfState => ({
  spanM,
  axialStiffnessN: 3.76e6,
  expansionPerDegC: 1.15e-5,
  from: { weightNPerM: 3, temperatureDegC: 15, horizontalN: 1500 },
  to: { weightNPerM: 12, temperatureDegC: -10 },
});

it("under ice the longer span pulls the pole towards itself", () => {
  const row = clampedSpans([span(30), span(50), span(50)]);
  if (!row.ok) throw new Error(row.fault.what);
  const { horizontalN, poleDifferenceN } = row.value;
  expect(horizontalN).toHaveLength(3);
  expect(poleDifferenceN).toEqual([(horizontalN[1] ?? 0) - (horizontalN[0] ?? 0), 0]);
  expect(poleDifferenceN[0]).toBeGreaterThan(0);
});

it("a row of one span has no pole between, and an empty row nothing", () => {
  expect(clampedSpans([span(30)])).toMatchObject({ value: { poleDifferenceN: [] } });
  expect(clampedSpans([])).toEqual({ ok: true, value: { horizontalN: [], poleDifferenceN: [] } });
});

it("a span that does not settle is told, not passed over", () => {
  expect(clampedSpans([span(30), span(1e200)])).toMatchObject({ ok: false, fault: { code: "not-settled" } });
});
