import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { SpanKind, SpanRow } from "./planOnSpans.ts";
import { readOffsetM, readSizeM, readSpanTags } from "./readSpanPlace.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import { readSide, readStructureKind } from "./siteValue.ts";
import type { Table } from "./table.ts";

/** Buildings and signs; one is already there where span, kind, side and place are the same. */
export const structureKind: SpanKind<"structure"> = {
  table: "structure",
  thing: "structure",
  read: readStructures,
  sameBy: ({ kind, side, besideM, offsetM }) => [kind, besideM === 0 ? "" : side, Math.round(offsetM * 100)],
};

/** Reads buildings and signs. One beside the line must say on which side. */
function readStructures(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<SpanRow<"structure">> {
  return readRows({ table, kind: "structure", map, options }, (row) => {
    const tags = readSpanTags(row, "structure");
    const offsetM = readOffsetM(row, "structure");
    const kind = row.value("kind", readStructureKind);
    if (row.text("kind") === "")
      row.refuse(
        "kind",
        "The structure does not say what it is.",
        "building, walked roof, sign, lit sign, grounded lit sign, walked sign, chimney",
      );
    const lengthM = readSizeM(row, "along", "The structure has no length along the span.");
    const besideM = readSizeM(row, "beside", "The structure has no distance beside the line.", true);
    const heightM = readSizeM(row, "top", "The structure has no height of its top.");
    const bottomM = row.lengthM("bottom");
    if (bottomM !== null && heightM !== null && !(bottomM > 0 && bottomM < heightM))
      row.refuse(
        "bottom",
        "The underside is not between the ground and the top.",
        "a height under the top, or nothing",
      );
    const side = row.value("side", readSide);
    if (row.text("side") === "" && besideM !== null && besideM > 0)
      row.refuse("side", "The structure does not say on which side of the line it stands.", "left or right");
    if (offsetM === null || kind === null || lengthM === null || besideM === null || heightM === null) return null;
    if (row.bad.length > 0) return null;
    const shape = { kind, offsetM, lengthM, besideM, side: side ?? "left", heightM, bottomM };
    return { fileLine: row.line, ...tags, columns: { name: row.text("name"), ...shape } };
  });
}
