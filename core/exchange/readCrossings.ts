import { readSurface } from "./cellValue.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { SpanKind, SpanRow } from "./planOnSpans.ts";
import { readOffsetM, readSizeM, readSpanTags } from "./readSpanPlace.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** Crossings; one is already there where span, surface and place are the same. */
export const crossingKind: SpanKind<"crossing"> = {
  table: "crossing",
  thing: "crossing",
  read: readCrossings,
  sameBy: ({ surface, offsetM }) => [surface, Math.round(offsetM * 100)],
};

/** Reads what lies under spans: road, driveway, rail, water, pedestrian way or field. */
function readCrossings(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<SpanRow<"crossing">> {
  return readRows({ table, kind: "crossing", map, options }, (row) => {
    const tags = readSpanTags(row, "crossing");
    const surface = row.value("surface", readSurface);
    if (row.text("surface") === "")
      row.refuse(
        "surface",
        "The crossing does not say what is crossed.",
        "road, driveway, rail, water, pedestrian or field",
      );
    const offsetM = readOffsetM(row, "crossing");
    const widthM = readSizeM(row, "width", "The crossing has no width.");
    const surfaceM = row.lengthM("surfaceElevation");
    if (surface === null || offsetM === null || widthM === null || row.bad.length > 0) return null;
    return { fileLine: row.line, ...tags, columns: { name: row.text("name"), surface, offsetM, widthM, surfaceM } };
  });
}
