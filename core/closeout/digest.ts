import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** A row of any version of the route file: what it holds, by column. */
export type PlainRow = Readonly<Record<string, string | number | boolean | null>>;

/**
 * One SHA-256, in hex, over every row of a route: tables by name, rows by id, columns by name, one line a row. Tables without rows are not in
 * it, and true counts as 1, so that it can be taken from the file alone.
 *
 * @param tables  the rows of each table by id
 */
export function digestOf(tables: Readonly<Record<string, ReadonlyMap<string, PlainRow>>>): string {
  const hash = sha256.create();
  for (const table of Object.keys(tables).sort()) {
    const rows = tables[table] ?? new Map<string, PlainRow>();
    for (const id of [...rows.keys()].sort()) hash.update(utf8ToBytes(`${table} ${plainText(rows.get(id) ?? {})}\n`));
  }
  return bytesToHex(hash.digest());
}

/** A row as one line of text that tells it from every other. */
export function plainText(row: PlainRow): string {
  const columns = Object.keys(row).sort();
  return JSON.stringify(columns.map((column) => [column, plainValue(row[column] ?? null)]));
}

function plainValue(value: string | number | boolean | null): string | number | null {
  return typeof value === "boolean" ? Number(value) : value;
}
