import type { Guy } from "../model/tables.ts";
import { radFromDeg } from "../units/angle.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { readNumber } from "./cellValue.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { readSizeM } from "./readSpanPlace.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import { headingForceUnit, readForceN } from "./siteValue.ts";
import type { Table } from "./table.ts";

/** A guy as a file gives it: its pole by tag, its strand by name, empty for the route's usual one. */
type GuyRow = Omit<Guy, "id" | "poleId" | "strandTypeId"> & {
  readonly fileLine: number;
  readonly tag: string;
  readonly strand: string;
};

/** Reads guys. Their bearing is clockwise from north; what an anchor holds is in the heading's unit, else the route's. */
export function readGuys(table: Table, map: ColumnMap, options: ImportOptions, units: UnitSystem): ReadRows<GuyRow> {
  const forceUnit = headingForceUnit(map.anchor ?? "") ?? (units === "us" ? "lbf" : "N");
  return readRows({ table, kind: "guy", map, options }, (row) => {
    const tag = row.text("tag");
    if (tag === "") row.refuse("tag", "The guy names no pole.", "a pole's tag");
    const heightM = readSizeM(row, "height", "The guy has no height above ground.");
    const leadM = readSizeM(row, "lead", "The guy has no lead.");
    const bearingDeg = row.value("bearing", readNumber);
    if (row.text("bearing") === "" || (bearingDeg !== null && !(bearingDeg >= 0 && bearingDeg <= 360)))
      row.refuse("bearing", "The guy has no bearing.", "degrees from north, clockwise, 0 to 360");
    const anchorN = row.value("anchor", (text) => readForceN(text, forceUnit));
    if (heightM === null || leadM === null || bearingDeg === null || row.bad.length > 0) return null;
    const directionRad = directionOf(bearingDeg);
    return {
      fileLine: row.line,
      tag,
      strand: row.text("strand"),
      heightM,
      leadM,
      directionRad,
      anchorN,
      note: row.text("note"),
    };
  });
}

/** Counter-clockwise from east, over -π to π, of a bearing clockwise from north. */
function directionOf(bearingDeg: number): number {
  return radFromDeg(bearingDeg > 270 ? 450 - bearingDeg : 90 - bearingDeg);
}
