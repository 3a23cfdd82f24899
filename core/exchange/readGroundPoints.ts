import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { SpanKind, SpanRow } from "./planOnSpans.ts";
import { readOffsetM, readSpanTags } from "./readSpanPlace.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** Measured ground; one point is already there where the span has one at the same place. */
export const groundPointKind: SpanKind<"groundPoint"> = {
  table: "groundPoint",
  thing: "ground point",
  read: readGroundPoints,
  sameBy: ({ offsetM }) => [Math.round(offsetM * 100)],
};

function readGroundPoints(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<SpanRow<"groundPoint">> {
  return readRows({ table, kind: "groundPoint", map, options }, (row) => {
    const tags = readSpanTags(row, "ground point");
    const offsetM = readOffsetM(row, "ground point");
    const groundM = row.lengthM("elevation");
    if (row.text("elevation") === "")
      row.refuse("elevation", "The ground point has no elevation.", "an elevation such as 331 ft or 101.2 m");
    if (offsetM === null || groundM === null || row.bad.length > 0) return null;
    return { fileLine: row.line, ...tags, columns: { offsetM, groundM } };
  });
}
