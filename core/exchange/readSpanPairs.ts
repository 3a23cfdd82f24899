import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { type ReadRows, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** A span as a file gives it: the tags of its poles and, where measured, its length. */
export type SpanPairRow = {
  readonly fileLine: number;
  readonly fromTag: string;
  readonly toTag: string;
  /** Null where the file gives none. */
  readonly lengthM: number | null;
  readonly note: string;
};

/** Reads spans given as pairs of poles. A pair that repeats, either way round, is reported at its second row. */
export function readSpanPairs(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<SpanPairRow> {
  const firstLine = new Map<string, number>();
  return readRows({ table, kind: "spanPair", map, options }, (row) => {
    const fromTag = row.text("fromTag");
    const toTag = row.text("toTag");
    if (fromTag === "") row.refuse("fromTag", "The span names no first pole.", "a pole's tag");
    if (toTag === "") row.refuse("toTag", "The span names no second pole.", "a pole's tag");
    if (fromTag !== "" && fromTag === toTag)
      row.refuse("toTag", "The span ends at the pole it starts from.", "the tag of another pole");
    const lengthM = row.lengthM("length");
    if (lengthM !== null && !(lengthM > 0))
      row.refuse("length", "A span's length must be more than 0.", "a length, or nothing");
    if (row.bad.length > 0) return null;
    const key = JSON.stringify([fromTag, toTag].sort());
    const earlier = firstLine.get(key);
    if (earlier !== undefined) {
      row.refuse("fromTag", `The span is already on ${table.lineWord} ${earlier}.`, "each pair of poles once");
      return null;
    }
    firstLine.set(key, row.line);
    return { fileLine: row.line, fromTag, toTag, lengthM, note: row.text("note") };
  });
}
