import { saysSame } from "../../closeout/packet/readingText.ts";
import type { Route } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Row } from "../../model/tables.ts";
import { rowEdit } from "../tableRow.ts";

/** The edits that put away crews' readings that say the same as one that stands: they go with it. */
export function agreeingWith(route: Route, standing: Row<"reading">): RowChange[] {
  return [...route.rivalReading.values()]
    .filter((one) => one.readingId === standing.id && saysSame(one, standing))
    .map((one) => rowEdit("rivalReading", one, null));
}
