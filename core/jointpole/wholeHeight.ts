import { metresPerInch } from "../units/constants.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { FreeHeights } from "./barred.ts";

/** Whole counts of a tape between which a wire may be attached, both included. */
export type Stretch = { readonly least: number; readonly most: number };

/** What a height may be off a whole count by and still be it, in counts. */
const noiseCount = 1e-9;

/** What people move things on a pole by, m: an inch, or a centimetre. */
export function tapeStepM(units: UnitSystem): number {
  return units === "us" ? metresPerInch : 0.01;
}

/** Free heights in whole counts above the ground, rounded inwards so that they stay free; those too narrow for one are left out. */
export function wholeStretches(free: readonly Pick<FreeHeights, "fromM" | "toM">[], stepM: number): readonly Stretch[] {
  return free
    .map(({ fromM, toM }) => ({
      least: Math.max(Math.ceil(fromM / stepM - noiseCount), 1),
      most: Math.floor(toM / stepM + noiseCount),
    }))
    .filter(({ least, most }) => least <= most);
}

/**
 * The free height nearest to a present one that a tape reads off.
 *
 * @returns height above the ground, m; null where no whole one is free
 */
export function nearestWholeHeightM(
  free: readonly Pick<FreeHeights, "fromM" | "toM">[],
  presentM: number,
  units: UnitSystem,
): number | null {
  const stepM = tapeStepM(units);
  const [first, ...others] = wholeStretches(free, stepM).map(
    ({ least, most }) => Math.min(Math.max(Math.round(presentM / stepM), least), most) * stepM,
  );
  if (first === undefined) return null;
  return others.reduce((a, b) => (Math.abs(b - presentM) < Math.abs(a - presentM) ? b : a), first);
}
