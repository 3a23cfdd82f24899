import { type Settled, tensionNotSettled } from "./settled.ts";

/** The tension in the new state, N, > 0, and how many steps the search took. */
export type NewState = { readonly horizontalN: number; readonly stepCount: number };

const stepLimit = 100;
const settledFrac = 1e-8;

/**
 * The positive root of H^2 (H + shiftN) = targetN3 by Newton's method, function and slope both divided by H. From the root on the
 * function is convex and rises, so steps from above stay above; a step of a hundred-millionth leaves no error that shows.
 *
 * @param shiftN   any finite value, N
 * @param targetN3 > 0, N3
 * @returns or a fault when the search did not settle
 */
export function solveStateCubic(shiftN: number, targetN3: number): Settled<NewState> {
  let horizontalN = aboveRootN(shiftN, targetN3);
  for (let stepCount = 1; stepCount <= stepLimit; stepCount += 1) {
    const excessN2 = horizontalN * (horizontalN + shiftN) - targetN3 / horizontalN;
    const nextN = horizontalN - excessN2 / (3 * horizontalN + 2 * shiftN);
    const isSettled = Math.abs(nextN - horizontalN) <= settledFrac * nextN;
    if (isSettled && nextN > 0 && nextN < Number.POSITIVE_INFINITY) {
      return { ok: true, value: { horizontalN: nextN, stepCount } };
    }
    horizontalN = nextN;
  }
  return tensionNotSettled(stepLimit);
}

/** A tension not far above the root: each bound leaves out what makes the other one wide. */
function aboveRootN(shiftN: number, targetN3: number): number {
  if (shiftN > 0) return Math.min(Math.cbrt(targetN3), Math.sqrt(targetN3 / shiftN));
  return Math.min(Math.cbrt(targetN3), targetN3 / shiftN ** 2) - shiftN;
}
