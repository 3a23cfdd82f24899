import type { ClearanceCase } from "../model/clearanceRows.ts";
import type { ClearanceLimit, TableName } from "../model/tables.ts";
import { noiseM } from "./leastPerShare.ts";

/** Rules whose findings hang on how high our strand is attached. */
export type HeightRule =
  | "crossing-clearance"
  | "ground-clearance"
  | "structure-clearance"
  | "drop-clearance"
  | "supply-separation-at-pole"
  | "supply-separation-in-span"
  | "communication-separation-at-pole"
  | "communication-separation-in-span"
  | "street-light-separation"
  | "outside-usable-space";

/** What keeps our strand from some heights. */
export type Cause = {
  readonly ruleId: HeightRule;
  /** What the strand must keep away from; for open ground the span, for the usable space the pole. */
  readonly against: { readonly table: TableName; readonly id: string };
  /** The span it happens in; null at the pole itself. */
  readonly spanId: string | null;
  /** The case it binds under; null where it does not hang on our sag. */
  readonly condition: ClearanceCase | null;
  /** What must be kept, m: a row of the clearance set, a standard of the company, or nothing but the pole's own top. */
  readonly limit: ClearanceLimit | "usableFromM" | "poleTopGapM";
  /** What must be kept under it, where the line may pass there and the limit is another. */
  readonly under?: ClearanceLimit;
  /**
   * Part of a rise at the pole that is a rise at the place where an end of the barred heights binds: 1 at the pole, 0 at the far one.
   * Null for no end, and for one where ours and another wire would change places.
   */
  readonly shares: { readonly above: number | null; readonly below: number | null };
};

/**
 * Heights above the ground at a pole that a wire may not be attached at: all between the two, both ends allowed, m.
 * -Infinity and Infinity where there is no end; both, where no height here would do.
 */
export type Barred<C = Cause> = { readonly aboveM: number; readonly belowM: number; readonly cause: C };

/** Heights that nothing bars, ends included, m above the ground at the pole, and what sets each end. */
export type FreeHeights<C = Cause> = {
  readonly fromM: number;
  readonly toM: number;
  /** Null where only the ground itself is below. */
  readonly from: C | null;
  /** Null where nothing known is above: `toM` is Infinity. */
  readonly to: C | null;
};

/** What barred heights leave free above the ground, upwards. */
export function freeHeights<C>(barred: readonly Barred<C>[]): readonly FreeHeights<C>[] {
  const free: FreeHeights<C>[] = [];
  let reached: { readonly heightM: number; readonly cause: C | null } = { heightM: 0, cause: null };
  for (const { aboveM, belowM, cause } of barred.toSorted((a, b) => a.aboveM - b.aboveM)) {
    if (!(aboveM < belowM)) continue;
    // two bars that meet leave the height they meet at, whatever the last binary digit of their sums
    if (aboveM > 0 && aboveM >= reached.heightM - noiseM)
      free.push({ fromM: Math.min(reached.heightM, aboveM), toM: aboveM, from: reached.cause, to: cause });
    if (belowM > reached.heightM) reached = { heightM: belowM, cause };
  }
  if (reached.heightM < Number.POSITIVE_INFINITY)
    free.push({ fromM: reached.heightM, toM: Number.POSITIVE_INFINITY, from: reached.cause, to: null });
  return free;
}
