import type { LivingUnit } from "../model/tables.ts";
import { readUnitKind } from "./cellValue.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { unpackTags } from "./packedTags.ts";
import { type Place, readPlace } from "./readPlace.ts";
import { type ReadRows, type RowReader, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";
import { addressKey, joinAddress } from "./unitAddress.ts";

/** A living unit as a file gives it; `columns` holds only what the file has a column for. */
export type LivingUnitRow = {
  readonly fileLine: number;
  readonly address: string;
  readonly place: Place;
  readonly columns: Partial<Omit<LivingUnit, "id" | "address" | "eastM" | "northM">>;
};

type Read = LivingUnitRow & { readonly buildingOfUnit: string };

/**
 * Reads living units. An address that repeats, unit included, is reported at its second row. Where the file has no building
 * column, units told apart at one address share that address as their building.
 */
export function readLivingUnits(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<LivingUnitRow> {
  const firstLine = new Map<string, number>();
  const read = readRows<Read>({ table, kind: "livingUnit", map, options }, (row) => {
    const joined = joinAddress({
      address: row.text("address"),
      houseNumber: row.text("houseNumber"),
      houseName: row.text("houseName"),
      street: row.text("street"),
      unit: row.text("unit"),
    });
    const addressField = row.has("address") ? "address" : "houseNumber";
    if (joined === null)
      row.refuse(
        addressField,
        "The row has no address: nothing tells the house.",
        "a house number or name, or a full address",
      );
    else if (joined.address.length > 200)
      row.refuse(addressField, "The address is too long.", "at most 200 characters");
    const place = readPlace(row);
    const columns = readColumns(row);
    if (joined === null || place === null || row.bad.length > 0) return null;
    const key = addressKey(joined.address);
    const earlier = firstLine.get(key);
    if (earlier !== undefined) {
      row.refuse(
        addressField,
        `${joined.address} is already on ${table.lineWord} ${earlier}.`,
        "an address used once in the file, or units that tell them apart",
      );
      return null;
    }
    firstLine.set(key, row.line);
    return { fileLine: row.line, address: joined.address, place, columns, buildingOfUnit: joined.building };
  });
  return { ...read, rows: map.building === undefined ? withBuildings(read.rows) : read.rows.map(bare) };
}

function readColumns(row: RowReader): LivingUnitRow["columns"] {
  const kind = row.value("kind", readUnitKind);
  const attachHeightM = row.lengthM("attachHeight");
  if (attachHeightM !== null && !(attachHeightM > 0))
    row.refuse("attachHeight", "A height must be more than 0.", "a height such as 12 ft, or nothing");
  const note = [row.text("note"), unpackTags(row.text("otherTags"))].filter((part) => part !== "").join("; ");
  return {
    ...(kind === null ? {} : { kind }),
    ...(row.has("attachHeight") ? { attachHeightM } : {}),
    ...(row.has("ground") ? { groundM: row.lengthM("ground") } : {}),
    ...(row.has("building") ? { building: row.text("building") } : {}),
    ...(row.has("note") || row.has("otherTags") ? { note } : {}),
  };
}

function withBuildings(rows: readonly Read[]): LivingUnitRow[] {
  const unitCount = new Map<string, number>();
  for (const { buildingOfUnit } of rows) unitCount.set(buildingOfUnit, (unitCount.get(buildingOfUnit) ?? 0) + 1);
  return rows.map((row) => {
    const isShared = row.buildingOfUnit !== "" && (unitCount.get(row.buildingOfUnit) ?? 0) > 1;
    return isShared ? { ...bare(row), columns: { ...row.columns, building: row.buildingOfUnit } } : bare(row);
  });
}

function bare({ fileLine, address, place, columns }: Read): LivingUnitRow {
  return { fileLine, address, place, columns };
}
