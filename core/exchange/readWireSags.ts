import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { SpanKind, SpanRow } from "./planOnSpans.ts";
import { readSizeM, readSpanTags } from "./readSpanPlace.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import { readWireKind } from "./siteValue.ts";
import type { Table } from "./table.ts";

/** Measured sags of other parties' wires; one is already there where span, owner and kind of wire are the same. */
export const wireSagKind: SpanKind<"wireSag"> = {
  table: "wireSag",
  thing: "wire",
  read: readWireSags,
  sameBy: ({ owner, kind }) => [owner, kind],
};

function readWireSags(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<SpanRow<"wireSag">> {
  return readRows({ table, kind: "wireSag", map, options }, (row) => {
    const tags = readSpanTags(row, "wire");
    const kind = row.value("kind", readWireKind);
    if (row.text("kind") === "")
      row.refuse("kind", "The row does not say which wire sags.", "communication, neutral, secondary or primary");
    const sagM = readSizeM(row, "sag", "The wire has no sag.");
    if (kind === null || sagM === null || row.bad.length > 0) return null;
    return { fileLine: row.line, ...tags, columns: { owner: row.text("owner"), kind, sagM } };
  });
}
