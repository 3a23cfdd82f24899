import type { StrengthCase } from "../model/catalogueRows.ts";
import type { StrengthLimit } from "../model/tables.ts";
import type { Plant } from "./plant.ts";
import type { HungState, SpanSag } from "./spanSag.ts";

/** The limit of a strength set for a part in a case: its strictest row; undefined where the set has none. */
export function strengthLimitFor(
  plant: Plant,
  part: StrengthLimit["part"],
  condition: StrengthCase,
): StrengthLimit | undefined {
  return plant
    .whereAll("strengthLimit", { strengthSetId: plant.settings().strengthSetId, part, condition })
    .map((id) => plant.rowOf("strengthLimit", id))
    .sort((a, b) => a.limitFrac - b.limitFrac)[0];
}

/** How a known span hangs in a case. */
export function stateIn(sag: Extract<SpanSag, { kind: "known" }>, condition: StrengthCase): HungState {
  return condition === "loaded" ? sag.tension : sag[condition];
}
