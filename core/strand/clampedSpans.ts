import { type ChangeOfState, changeOfState } from "./changeOfState.ts";
import type { Settled } from "./settled.ts";

/** A row of spans whose strand is clamped at every pole. */
export type ClampedSpans = {
  /** tension of each span, N */
  readonly horizontalN: readonly number[];
  /**
   * what the strand pulls each pole between two spans along a straight line, N: tension ahead less tension behind, so positive
   * towards the far end
   */
  readonly poleDifferenceN: readonly number[];
};

/**
 * Each span of a row by itself, as where every pole clamps the strand, and the difference of pull that each pole then bears. The poles
 * are taken as standing still: one that leans evens the tensions out a little.
 * The error is that of the change of state.
 *
 * @returns or the fault of the first span whose tension did not settle
 * @throws RangeError when a span is out of its range
 * @source change of state of each span; common practice for communication poles, no source
 */
export function clampedSpans(spans: readonly ChangeOfState[]): Settled<ClampedSpans> {
  const horizontalN: number[] = [];
  for (const span of spans) {
    const state = changeOfState(span);
    if (!state.ok) return state;
    horizontalN.push(state.value.horizontalN);
  }
  const poleDifferenceN = horizontalN.slice(1).map((aheadN, pole) => aheadN - (horizontalN[pole] ?? aheadN));
  return { ok: true, value: { horizontalN, poleDifferenceN } };
}
