import type { Crossing } from "../model/tables.ts";
import { readSurface } from "./cellValue.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** A crossing as a file gives it; its offset runs from the pole named first. */
export type CrossingRow = Omit<Crossing, "id" | "spanId"> & {
  readonly fileLine: number;
  readonly fromTag: string;
  readonly toTag: string;
};

/** Reads what lies under spans: road, driveway, rail, water, pedestrian way or field. */
export function readCrossings(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<CrossingRow> {
  return readRows({ table, kind: "crossing", map, options }, (row) => {
    const fromTag = row.text("fromTag");
    const toTag = row.text("toTag");
    if (fromTag === "" || toTag === "")
      row.refuse(
        fromTag === "" ? "fromTag" : "toTag",
        "The crossing does not name both poles of its span.",
        "the tags of the span's two poles",
      );
    const surface = row.value("surface", readSurface);
    if (row.text("surface") === "")
      row.refuse(
        "surface",
        "The crossing does not say what is crossed.",
        "road, driveway, rail, water, pedestrian or field",
      );
    const offsetM = row.lengthM("offset");
    if (row.text("offset") === "" || (offsetM !== null && offsetM < 0))
      row.refuse("offset", "The crossing has no distance from its first pole.", "a distance of 0 or more");
    const widthM = row.lengthM("width");
    if (row.text("width") === "" || (widthM !== null && !(widthM > 0)))
      row.refuse("width", "The crossing has no width.", "a width of more than 0");
    const surfaceM = row.lengthM("surfaceElevation");
    if (surface === null || offsetM === null || widthM === null || row.bad.length > 0) return null;
    return { fileLine: row.line, fromTag, toTag, name: row.text("name"), surface, offsetM, widthM, surfaceM };
  });
}
