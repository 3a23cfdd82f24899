import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLength, type LengthStyle } from "../../core/units/formatLength.ts";
import { parseLengthM } from "../../core/units/parseLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";

const lengthM = fc.double({ min: -5000, max: 5000, noNaN: true });

/** One unit of the last printed digit, m. */
const printedDigitM: Readonly<Record<UnitSystem, Readonly<Record<LengthStyle, number>>>> = {
  us: {
    span: 0.3048,
    drop: 0.3048,
    height: 0.0254,
    clearance: 0.0254,
    offset: 0.0254,
    sag: 0.00254,
    thickness: 0.000254,
  },
  metric: { span: 0.1, drop: 0.1, height: 0.01, clearance: 0.01, offset: 0.01, sag: 0.001, thickness: 0.0001 },
};

function printAndReadM(valueM: number, system: UnitSystem, style: LengthStyle): number {
  const parsed = parseLengthM(formatLength(valueM, system, style), system);
  if (!parsed.ok) throw new Error(parsed.what);
  return parsed.valueM;
}

const systems = fc.constantFrom<UnitSystem>("us", "metric");
const nearestStyles = fc.constantFrom<LengthStyle>("span", "drop", "height", "offset", "sag", "thickness");

describe("printing and reading a length", () => {
  it("a printed length reads back within half its last digit", () => {
    fc.assert(
      fc.property(lengthM, systems, nearestStyles, (valueM, system, style) => {
        const offByM = Math.abs(printAndReadM(valueM, system, style) - valueM);
        expect(offByM).toBeLessThanOrEqual(printedDigitM[system][style] / 2 + 1e-9);
      }),
    );
  });

  it("a clearance never reads better than it is, nor worse by more than its last digit", () => {
    fc.assert(
      fc.property(lengthM, systems, (valueM, system) => {
        const lostM = valueM - printAndReadM(valueM, system, "clearance");
        expect(lostM).toBeGreaterThanOrEqual(-1e-6 * printedDigitM[system].clearance - 1e-9);
        expect(lostM).toBeLessThanOrEqual(printedDigitM[system].clearance + 1e-9);
      }),
    );
  });

  it("a clearance typed in whole inches or centimetres prints as it was typed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 3000 }), (count) => {
        const feetText = `${Math.floor(count / 12)} ft ${count % 12} in`;
        const metresText = `${(count / 100).toFixed(2)} m`;
        const feet = parseLengthM(feetText, "us");
        const metres = parseLengthM(metresText, "metric");
        expect(feet.ok && formatLength(feet.valueM, "us", "clearance")).toBe(feetText);
        expect(metres.ok && formatLength(metres.valueM, "metric", "clearance")).toBe(metresText);
      }),
    );
  });

  it("any text is read or refused with words, and what is read is a finite number", () => {
    const text = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(..."0123456789 .,'\"-/ftincm") }));
    fc.assert(
      fc.property(text, systems, (typed, system) => {
        const parsed = parseLengthM(typed, system);
        if (parsed.ok) expect(Number.isFinite(parsed.valueM)).toBe(true);
        else expect(parsed.mend).not.toBe("");
      }),
    );
  });
});
