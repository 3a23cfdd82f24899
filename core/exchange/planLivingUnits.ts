import { freshIds } from "../model/freshId.ts";
import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { LivingUnit } from "../model/tables.ts";
import { countRows, type ImportRequest, type PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { placeRows } from "./placeRows.ts";
import { readLivingUnits } from "./readLivingUnits.ts";
import { addressKey } from "./unitAddress.ts";

const newUnit: Omit<LivingUnit, "id" | "address" | "eastM" | "northM"> = {
  kind: "home",
  building: "",
  attachHeightM: null,
  groundM: null,
  note: "",
};

/** What a file of living units would do to a route; a unit is already there where its address is. */
export function planLivingUnits(route: Route, request: ImportRequest, map: ColumnMap): Result<PlannedRows> {
  const { table, options = {} } = request;
  const read = readLivingUnits(table, map, options);
  const found = placeRows(route, table.name, read.rows);
  if (!found.ok) return found;
  const { placed, origin } = found.value;
  const present = new Map([...route.livingUnit.values()].map((unit) => [addressKey(unit.address), unit]));
  const nextId = freshIds(route, "livingUnit");
  const rows: RowChange[] = [];
  for (const { row, eastM, northM } of placed) {
    const before = present.get(addressKey(row.address)) ?? null;
    if (before && request.onExisting === "skip") continue;
    const id = before?.id ?? nextId();
    const after: LivingUnit = { ...newUnit, ...before, ...row.columns, id, address: row.address, eastM, northM };
    rows.push({ table: "livingUnit", id, before, after });
  }
  return ok({
    rows: [...(origin ? [origin] : []), ...rows],
    ...countRows(rows, "livingUnit"),
    skippedCount: placed.length - rows.length,
    spanCount: 0,
    bad: [...read.bad, ...found.value.bad],
    notes: read.notes,
    spansForReview: [],
  });
}
