import { metresPerSecondPerMph, pascalsPerPsf } from "../units/constants.ts";
import { requireFinite, requireNotNegative } from "../units/guard.ts";

/**
 * Pressure of a wind of 1 m/s on a flat face, Pa: half the density of air.
 *
 * @source NESC Rule 250C, 0.00256 psf at 1 mph, from memory
 */
export const pascalsAtOneMetrePerSecond = (0.00256 * pascalsPerPsf) / metresPerSecondPerMph ** 2;

/** A gust and what makes its pressure on a wire more or less; every factor 0 or more. */
export type Gust = {
  /** 3 s gust 10 m (33 ft) above ground, m/s */
  readonly gustMPerS: number;
  /** kz: height above ground */
  readonly heightFactor: number;
  /** GRF: length of the span, which no gust covers whole */
  readonly spanFactor: number;
  /** Cf: 1 for round wire */
  readonly shapeFactor: number;
  /** I */
  readonly importanceFactor: number;
};

/**
 * Pressure of extreme wind on the projected area of a wire, Pa: what lineLoad takes as windPa where a gust is known instead of a
 * district.
 *
 * @throws RangeError when an argument is out of its range
 * @source NESC Rule 250C, 0.00256 V^2 kz GRF I Cf (psf, mph), from memory; checked in tests/standards/lineLoad.test.ts
 */
export function windPressurePa(gust: Gust): number {
  for (const [name, value] of Object.entries(gust)) requireNotNegative(name, value);
  const { gustMPerS, heightFactor, spanFactor, shapeFactor, importanceFactor } = gust;
  const velocityPa = pascalsAtOneMetrePerSecond * gustMPerS ** 2;
  return requireFinite("windPa", velocityPa * heightFactor * spanFactor * shapeFactor * importanceFactor);
}
