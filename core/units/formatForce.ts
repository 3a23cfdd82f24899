import { newtonsPerPoundForce } from "./constants.ts";
import { fixedText } from "./fixedText.ts";
import type { UnitSystem } from "./unitSystem.ts";

/**
 * Prints a force: `379 lbf`; `379 N` under a kilonewton, `5.94 kN` from there on.
 *
 * @throws RangeError when forceN is not finite
 */
export function formatForce(forceN: number, system: UnitSystem): string {
  if (system === "us") return `${fixedText(forceN / newtonsPerPoundForce, 0)} lbf`;
  // 999.5 N would otherwise print as 1000 N beside a 1.00 kN
  return Math.abs(forceN) < 999.5 ? `${fixedText(forceN, 0)} N` : `${fixedText(forceN / 1000, 2)} kN`;
}
