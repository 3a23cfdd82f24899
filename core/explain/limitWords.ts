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
