import type { CatalogueName } from "../model/catalogueNames.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { rowEdit } from "./tableRow.ts";

/** Catalogue tables whose rows belong to a set: they are copied and taken away with it. */
export const limitTables: readonly CatalogueName[] = ["clearanceLimit", "strengthLimit", "loadFactor"];

/** The edits that copy the limits of a set to another set, each under an id of its own. */
export function copiedLimits(route: Route, table: CatalogueName, setId: string, newSetId: string): RowChange[] {
  if (table === "clearanceSet")
    return clearanceLimits(route, setId).map((row, index) =>
      rowEdit("clearanceLimit", null, {
        ...row,
        id: `${newSetId}-${row.surface}-${index + 1}`,
        clearanceSetId: newSetId,
      }),
    );
  if (table !== "strengthSet") return [];
  return [
    ...strengthLimits(route, setId).map((row, index) =>
      rowEdit("strengthLimit", null, { ...row, id: `${newSetId}-${row.part}-${index + 1}`, strengthSetId: newSetId }),
    ),
    ...loadFactors(route, setId).map((row, index) =>
      rowEdit("loadFactor", null, { ...row, id: `${newSetId}-${row.load}-${index + 1}`, strengthSetId: newSetId }),
    ),
  ];
}

/** The edits that take the limits of a set away. */
export function removedLimits(route: Route, table: CatalogueName, setId: string): RowChange[] {
  if (table === "clearanceSet") return clearanceLimits(route, setId).map((row) => rowEdit("clearanceLimit", row, null));
  if (table !== "strengthSet") return [];
  return [
    ...strengthLimits(route, setId).map((row) => rowEdit("strengthLimit", row, null)),
    ...loadFactors(route, setId).map((row) => rowEdit("loadFactor", row, null)),
  ];
}

function clearanceLimits(route: Route, setId: string) {
  return [...route.clearanceLimit.values()].filter((row) => row.clearanceSetId === setId);
}

function loadFactors(route: Route, setId: string) {
  return [...route.loadFactor.values()].filter((row) => row.strengthSetId === setId);
}

function strengthLimits(route: Route, setId: string) {
  return [...route.strengthLimit.values()].filter((row) => row.strengthSetId === setId);
}
