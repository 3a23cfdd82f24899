import type { ClearanceLimit } from "../model/tables.ts";
import { catalogueBasis } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation } from "./explanation.ts";

/** A row of the clearance set as an explanation tells it; null where the set has none. */
export function clearanceLimitTold(
  limit: ClearanceLimit | undefined,
  units: UnitSystem,
  words = "Least clearance of the clearance set",
): Explanation["limit"] {
  return limit
    ? { words, value: limit.limitM, text: formatLength(limit.limitM, units, "height"), basis: catalogueBasis(limit) }
    : null;
}

/** What a clearance leans on that nobody has measured, and where its limit is missing; `ends` are what the ground is known at. */
export function takenOfClearance(
  clearance: { readonly surfaceAssumed: boolean; readonly strandAssumed: boolean },
  limit: ClearanceLimit | undefined,
  ends: "poles" | "ends",
): readonly string[] {
  return [
    ...(clearance.surfaceAssumed
      ? [`The surface was taken as the straight line between the ground at both ${ends}.`]
      : []),
    ...(clearance.strandAssumed ? ["A pole lacks the height of our strand; the company's usual one was taken."] : []),
    ...(limit ? [] : ["The clearance set has no limit for this surface in this case."]),
  ];
}
