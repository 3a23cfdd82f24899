import { standardGravityMPerS2 } from "../units/constants.ts";
import { requireFinite, requireNotNegative, requirePositive } from "../units/guard.ts";

/**
 * Glaze ice, 57 lb/ft3, rounded.
 *
 * @source GO 95 Rule 43.1-B, seen; NESC Rule 250B, from memory
 */
const glazeIceKgPerM3 = 913;

/** What hangs in the span and what the weather adds. All 0 or more; the diameter more than 0. */
export type LineLoadCase = {
  /** outside diameter ice and wind see; strand lashed to a cable: the sum of both diameters */
  readonly diameterM: number;
  /** weight of strand, cable and lashing without ice */
  readonly weightNPerM: number;
  /** radial thickness of ice */
  readonly iceM: number;
  readonly iceDensityKgPerM3?: number | undefined;
  /** wind pressure on the projected area, shape factor 1 */
  readonly windPa: number;
  /** the additive constant of a loading district; 0 where there is none */
  readonly constantNPerM: number;
};

/** Loads per length of line, and how far the loaded line swings from the vertical. */
export type LineLoad = {
  readonly iceNPerM: number;
  readonly verticalNPerM: number;
  readonly windNPerM: number;
  readonly resultantNPerM: number;
  /** resultant plus the additive constant: for tension only, never for sag */
  readonly totalNPerM: number;
  /** 0 hanging straight, pi/2 blown level */
  readonly swingRad: number;
};

/**
 * Load per length of a strand bundle under ice and wind.
 *
 * Ice is a hollow cylinder round the bundle's diameter, wind presses on the iced diameter, the constant is added to the
 * resultant and to neither component.
 *
 * @throws RangeError when an argument is out of its range or not finite
 * @source NESC Rules 250B, 251A, 251B, from memory; checked in tests/standards/lineLoad.test.ts
 */
export function lineLoad(load: LineLoadCase): LineLoad {
  const iceDensityKgPerM3 = load.iceDensityKgPerM3 ?? glazeIceKgPerM3;
  requirePositive("diameterM", load.diameterM);
  requireNotNegative("weightNPerM", load.weightNPerM);
  requireNotNegative("iceM", load.iceM);
  requireNotNegative("iceDensityKgPerM3", iceDensityKgPerM3);
  requireNotNegative("windPa", load.windPa);
  requireNotNegative("constantNPerM", load.constantNPerM);

  const iceAreaM2 = Math.PI * load.iceM * (load.diameterM + load.iceM);
  const iceNPerM = iceDensityKgPerM3 * standardGravityMPerS2 * iceAreaM2;
  const verticalNPerM = load.weightNPerM + iceNPerM;
  const windNPerM = load.windPa * (load.diameterM + 2 * load.iceM);
  const resultantNPerM = Math.hypot(verticalNPerM, windNPerM);
  return {
    iceNPerM,
    verticalNPerM,
    windNPerM,
    resultantNPerM,
    totalNPerM: requireFinite("totalNPerM", resultantNPerM + load.constantNPerM),
    swingRad: Math.atan2(windNPerM, verticalNPerM),
  };
}
