import { metresPerFoot, metresPerInch, newtonsPerPoundForce } from "../../../core/units/constants.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";

/** A quantity as a column shows it: the heading carries the unit, the cell the bare figure. */
export type Measure = {
  /** True where it is a length and may be typed with any length's mark. */
  readonly isLength: boolean;
} & { readonly [U in UnitSystem]: { readonly unit: string; readonly si: number; readonly decimalCount: number } };

const m = (decimalCount: number) => ({ unit: "m", si: 1, decimalCount });

/** Lengths along the line. */
export const runMeasure: Measure = {
  isLength: true,
  us: { unit: "ft", si: metresPerFoot, decimalCount: 1 },
  metric: m(2),
};

/** Heights and elevations. */
export const heightMeasure: Measure = {
  isLength: true,
  us: { unit: "ft", si: metresPerFoot, decimalCount: 2 },
  metric: m(2),
};

/** Short distances: from a pole, sags. */
export const shortMeasure: Measure = {
  isLength: true,
  us: { unit: "in", si: metresPerInch, decimalCount: 1 },
  metric: m(3),
};

export const forceMeasure: Measure = {
  isLength: false,
  us: { unit: "lbf", si: newtonsPerPoundForce, decimalCount: 0 },
  metric: { unit: "N", si: 1, decimalCount: 0 },
};

/** A figure that reads the same in both systems of units. */
export function plainMeasure(unit: string, decimalCount: number, si = 1): Measure {
  const both = { unit, si, decimalCount };
  return { isLength: false, us: both, metric: both };
}
