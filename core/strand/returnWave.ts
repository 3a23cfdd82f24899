import { standardGravityMPerS2 } from "../units/constants.ts";
import { requireFinite, requirePositive } from "../units/guard.ts";

/**
 * Sag of a span by stopwatch: a blow on the strand at one pole runs to the other and back, and the slacker the span, the slower. Span,
 * weight and tension need not be known, and the span may slope.
 *
 * For a strand of even load; a terminal or coil in the span throws part of the wave back early. Reads high against the catenary by
 * 0.013 % at a sag of 1 % of the span, 0.3 % at 5 %; a tenth of a second in ten is 2 % of the sag.
 *
 * @param timeS       from the blow until the wave has come back so many times, s, > 0
 * @param returnCount how many times, 1 or more
 * @returns midspan sag, m
 * @throws RangeError when an argument is out of its range
 * @source RUS Bulletin 1726C-115 of 1998, D = 48.3 (T / 2N)^2 inches, seen: from the wave speed sqrt(g H / w) over D = w L^2 / 8H,
 *   which gives D = g T^2 / 32 N^2; checked in tests/standards/returnWave.test.ts
 */
export function sagByReturnWaveM(timeS: number, returnCount: number): number {
  requirePositive("timeS", timeS);
  requireReturns(returnCount);
  return requireFinite("sagM", (standardGravityMPerS2 / 32) * (timeS / returnCount) ** 2);
}

/**
 * Time that a wave on the strand needs for so many returns at a wanted sag: the other way round.
 *
 * @param sagM midspan sag, m, > 0
 * @returns s
 * @throws RangeError when an argument is out of its range
 */
export function returnWaveS(sagM: number, returnCount: number): number {
  requirePositive("sagM", sagM);
  requireReturns(returnCount);
  return requireFinite("timeS", returnCount * Math.sqrt((32 * sagM) / standardGravityMPerS2));
}

function requireReturns(returnCount: number): void {
  if (!(Number.isSafeInteger(returnCount) && returnCount >= 1)) {
    throw new RangeError(`returnCount must be a whole number from 1, not ${returnCount}`);
  }
}
