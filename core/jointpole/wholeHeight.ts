import { metresPerInch } from "../units/constants.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { FreeHeights } from "./barred.ts";

const metresPerCentimetre = 0.01;

/** What the ends of a range may be off by before a whole inch at the end counts as outside, in inches or centimetres. */
const noiseCount = 1e-9;

/**
 * The free height nearest to a present one that a tape reads off: in whole inches or centimetres, rounded inwards so that it stays
 * free.
 *
 * @returns height above the ground, m; null where no whole one is free
 */
export function nearestWholeHeightM(free: readonly FreeHeights[], presentM: number, units: UnitSystem): number | null {
  const stepM = units === "us" ? metresPerInch : metresPerCentimetre;
  const heightsM = free.flatMap(({ fromM, toM }) => {
    const least = Math.max(Math.ceil(fromM / stepM - noiseCount), 1);
    const most = Math.floor(toM / stepM + noiseCount);
    if (least > most) return [];
    return [Math.min(Math.max(Math.round(presentM / stepM), least), most) * stepM];
  });
  const [first, ...others] = heightsM;
  if (first === undefined) return null;
  return others.reduce((a, b) => (Math.abs(b - presentM) < Math.abs(a - presentM) ? b : a), first);
}
