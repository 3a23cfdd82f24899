import { requireNotNegative } from "../units/guard.ts";
import { type ChangeOfState, changeOfState, type LoadState } from "./changeOfState.ts";
import type { Settled } from "./settled.ts";

/** A cable lashed onto strand that hangs already. */
export type Lashing = {
  /** cable and lashing wire, N/m, 0 or more */
  readonly addedNPerM: number;
  readonly temperatureDegC: number;
  /** all that hangs at single places from now on: coils, terminals; as before where left out */
  readonly pointLoads?: LoadState["pointLoads"];
};

/** The line after a cable has been lashed on. */
export type LashedState = LoadState & { readonly horizontalN: number };

/**
 * Stringing in stages: the strand is pulled by itself, then a cable is lashed on, later perhaps a second one over both.
 *
 * Every stage is solved from the pulled strand, so no error gathers: what hangs at the end depends on what was lashed on and how warm
 * it is, not on the order. Its error is that of the change of state. A cable bears no tension of its own.
 *
 * @param pulled   the span with its strand as it was pulled
 * @param lashings in the order of work
 * @returns the line after each stage, or the fault of the first that did not settle
 * @throws RangeError when an argument is out of its range
 * @source change of state by stages; checked in tests/standards/changeOfState.test.ts
 */
export function lashOn(
  pulled: Omit<ChangeOfState, "to">,
  lashings: readonly Lashing[],
): Settled<readonly LashedState[]> {
  const states: LashedState[] = [];
  let hung: LoadState = pulled.from;
  for (const { addedNPerM, temperatureDegC, pointLoads } of lashings) {
    requireNotNegative("addedNPerM", addedNPerM);
    hung = { weightNPerM: hung.weightNPerM + addedNPerM, temperatureDegC, pointLoads: pointLoads ?? hung.pointLoads };
    const state = changeOfState({ ...pulled, to: hung });
    if (!state.ok) return state;
    states.push({ ...hung, horizontalN: state.value.horizontalN });
  }
  return { ok: true, value: states };
}
