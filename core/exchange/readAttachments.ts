import type { Attachment } from "../model/tables.ts";
import { readAttachmentKind, readVolts, readYesNo } from "./cellValue.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { type ReadRows, type RowReader, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** An attachment as a file gives it, on the pole with that tag. */
export type AttachmentRow = Omit<Attachment, "id" | "poleId"> & { readonly fileLine: number; readonly tag: string };

/** Reads what hangs on poles. A wire that carries a supply voltage must say which. */
export function readAttachments(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<AttachmentRow> {
  const isKilovolts = /k\s*v|kilovolt/i.test(map.voltage ?? "");
  return readRows({ table, kind: "attachment", map, options }, (row) => {
    const tag = row.text("tag");
    if (tag === "") row.refuse("tag", "The attachment names no pole.", "a pole's tag");
    const kind = row.value("kind", readAttachmentKind);
    if (row.text("kind") === "")
      row.refuse(
        "kind",
        "The attachment has no kind.",
        "communication, neutral, secondary, primary, supplyFiber, equipment, streetLight, dripLoop or riser",
      );
    const heightM = row.lengthM("height");
    if (row.text("height") === "" || (heightM !== null && !(heightM > 0))) {
      row.refuse("height", "The attachment has no height above ground.", "a height such as 22 ft 6 in");
    }
    const voltageV = row.value("voltage", (text) => readVolts(text, isKilovolts));
    const bonded = row.value("bonded", readYesNo);
    refuseUnknownVoltage(row, kind);
    if (kind === null || heightM === null || row.bad.length > 0) return null;
    return {
      fileLine: row.line,
      tag,
      owner: row.text("owner"),
      kind,
      heightM,
      voltageV: voltageV ?? 0,
      note: row.text("note"),
      bonded: bonded ?? kind === "neutral",
    };
  });
}

function refuseUnknownVoltage(row: RowReader, kind: Attachment["kind"] | null): void {
  const isSupply = kind === "secondary" || kind === "primary";
  if (isSupply && row.text("voltage") === "")
    row.refuse("voltage", `A ${kind} wire needs its voltage to ground.`, "volts such as 120, or 7.2 kV");
}
