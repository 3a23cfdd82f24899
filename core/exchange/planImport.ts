import { ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import { exportedRows } from "./exportedRows.ts";
import type { ImportPlan, ImportRequest, PlannedRows } from "./importPlan.ts";
import { type ColumnMap, mapColumns } from "./mapColumns.ts";
import { isOnLocalGrid } from "./placeRows.ts";
import { planAttachments } from "./planAttachments.ts";
import { planDropCrossings } from "./planDropCrossings.ts";
import { planGuys } from "./planGuys.ts";
import { planLivingUnits } from "./planLivingUnits.ts";
import { planOnSpans } from "./planOnSpans.ts";
import { planPoles } from "./planPoles.ts";
import { planSpanPairs } from "./planSpanPairs.ts";
import { crossingKind } from "./readCrossings.ts";
import { groundPointKind } from "./readGroundPoints.ts";
import { structureKind } from "./readStructures.ts";
import { wireSagKind } from "./readWireSags.ts";

/**
 * Works out what a table would do to a route, without doing it. The rows of the plan are one change: applied together, or not
 * at all. The same route and table give the same plan.
 *
 * @returns refuses where columns cannot be matched or the file is on another grid; bad rows are listed in the plan
 */
export function planImport(route: Route, request: ImportRequest): Result<ImportPlan> {
  const own = exportedRows(request.table, request.kind);
  const mapped = mapColumns(own.table, request.kind, request.columns);
  if (!mapped.ok) return mapped;
  const columns = withOneGrid(route, mapped.value);
  const lengthUnit = request.options?.lengthUnit ?? (settingsOf(route).unitSystem === "us" ? "ft" : "m");
  const planned = planKind(
    route,
    { ...request, table: own.table, options: { ...request.options, lengthUnit } },
    columns,
  );
  if (!planned.ok) return planned;
  const bad = [...planned.value.bad].sort((a, b) => a.line - b.line);
  const refused = request.onBad === "refuse" && bad.length > 0;
  const notes = [...own.notes, ...planned.value.notes];
  return ok({ ...planned.value, bad, notes, columns, refused, ...(refused ? { rows: [], spansForReview: [] } : {}) });
}

/** Of two kinds of places in one file, those on the globe are read, unless the route is on a local grid. */
function withOneGrid(route: Route, map: ColumnMap): ColumnMap {
  const hasGrid = map.east !== undefined && map.north !== undefined;
  const left =
    hasGrid && isOnLocalGrid(route)
      ? ["lon", "lat"]
      : map.lon !== undefined && map.lat !== undefined
        ? ["east", "north"]
        : [];
  return Object.fromEntries(Object.entries(map).filter(([field]) => !left.includes(field)));
}

function planKind(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  switch (request.kind) {
    case "pole":
      return planPoles(route, request, map);
    case "livingUnit":
      return planLivingUnits(route, request, map);
    case "spanPair":
      return planSpanPairs(route, request, map);
    case "attachment":
      return planAttachments(route, request, map);
    case "crossing":
      return planOnSpans(route, request, map, crossingKind);
    case "groundPoint":
      return planOnSpans(route, request, map, groundPointKind);
    case "structure":
      return planOnSpans(route, request, map, structureKind);
    case "wireSag":
      return planOnSpans(route, request, map, wireSagKind);
    case "guy":
      return planGuys(route, request, map);
    case "dropCrossing":
      return planDropCrossings(route, request, map);
  }
}
