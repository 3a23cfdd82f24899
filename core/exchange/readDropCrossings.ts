import type { Row } from "../model/tables.ts";
import { readDropSurface } from "./cellValue.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { readSizeM } from "./readSpanPlace.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** What the drop of a living unit passes over, as a file gives it: the unit by its address. */
type DropCrossingRow = Omit<Row<"dropCrossing">, "id" | "livingUnitId"> & {
  readonly fileLine: number;
  readonly address: string;
};

/** Reads what drops pass over on their way. A roof must say how high it is: there is no ground to take in its stead. */
export function readDropCrossings(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<DropCrossingRow> {
  return readRows({ table, kind: "dropCrossing", map, options }, (row) => {
    const address = row.text("address");
    if (address === "") row.refuse("address", "The crossing names no living unit.", "an address of the route");
    const surface = row.value("surface", readDropSurface);
    if (row.text("surface") === "")
      row.refuse("surface", "The crossing does not say what is crossed.", "road, driveway, pedestrian, field or roof");
    const fromUnitM = readSizeM(row, "distance", "The crossing has no distance from the building.", true);
    const widthM = readSizeM(row, "width", "The crossing has no width.");
    const surfaceM = row.lengthM("surfaceElevation");
    if (surface === "roof" && row.text("surfaceElevation") === "")
      row.refuse("surfaceElevation", "The roof has no elevation.", "the elevation of the roof");
    if (surface === null || fromUnitM === null || widthM === null || row.bad.length > 0) return null;
    return { fileLine: row.line, address, name: row.text("name"), surface, fromUnitM, widthM, surfaceM };
  });
}
