import { requireFinite, requireNotNegative, requirePositive } from "../units/guard.ts";

/**
 * Tension along a straight guy that holds a level pull at a pole.
 *
 * @param levelN   level pull the guy holds, N, 0 or more
 * @param heightM  attachment above the anchor, m, > 0
 * @param leadM    from the pole to the anchor, level, m, > 0
 * @returns N
 * @throws RangeError when an argument is out of its range or not finite
 * @source G = F sqrt(h^2 + l^2) / l; equilibrium at the attachment, checked in tests/unit/strand/guyTension.test.ts
 */
export function guyTensionN(levelN: number, heightM: number, leadM: number): number {
  requireNotNegative("levelN", levelN);
  requirePositive("heightM", heightM);
  requirePositive("leadM", leadM);
  return requireFinite("tensionN", (levelN * Math.hypot(heightM, leadM)) / leadM);
}
