import { readCsv } from "../../../core/exchange/readCsv.ts";
import { readGeojson } from "../../../core/exchange/readGeojson.ts";
import type { Table } from "../../../core/exchange/table.ts";
import { fail, type Result } from "../../../core/model/result.ts";
import { decodeText, type TextEncoding } from "./decodeText.ts";
import { readXlsx } from "./readXlsx.ts";

/** Largest file that is taken in one import, bytes. */
export const largestFileBytes = 64 * 1024 * 1024;

/** How the bytes are to be read where the file does not say. */
export type ReadTableOptions = { readonly encoding?: TextEncoding; readonly sheet?: string };

/**
 * A file's bytes as a table. What the file is is told from its first bytes and then from its name: a workbook, GeoJSON, or
 * delimited text. Never throws on what a file holds.
 *
 * @param name name of the file as the person knows it, without its folder
 */
export async function readTable(
  name: string,
  bytes: Uint8Array,
  options: ReadTableOptions = {},
): Promise<Result<Table>> {
  if (bytes.length > largestFileBytes) {
    return fail(
      "too-large",
      `The file has ${Math.round(bytes.length / 1e6)} MB; at most ${Math.round(largestFileBytes / 1e6)} MB can be read.`,
      name,
      "Cut it to the area of this route and try again.",
    );
  }
  if (startsWith(bytes, [0x50, 0x4b, 0x03, 0x04])) return readXlsx(name, bytes, options.sheet);
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    return fail(
      "old-workbook",
      "The file is a workbook of the old kind, or locked by a password.",
      name,
      "Save it as XLSX or CSV, without a password.",
    );
  }
  const text = decodeText(name, bytes, options.encoding);
  if (!text.ok) return text;
  if (/^\uFEFF?\s*</.test(text.value.text)) {
    return fail("not-table", "The file is XML or a web page, not a table.", name, "Give CSV, XLSX or GeoJSON.");
  }
  const table = isJson(name, text.value.text)
    ? readGeojson(name, text.value.text)
    : readCsv(name, text.value.text, delimiterOf(name));
  if (!table.ok || text.value.note === "") return table;
  return { ok: true, value: { ...table.value, notes: [text.value.note, ...table.value.notes] } };
}

function startsWith(bytes: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, index) => bytes[index] === byte);
}

function isJson(name: string, text: string): boolean {
  return /\.(?:geo)?json$/i.test(name) || (!/\.(?:csv|tsv|txt)$/i.test(name) && /^\uFEFF?\s*\{/.test(text));
}

function delimiterOf(name: string): string {
  return /\.tsv$/i.test(name) ? "\t" : "";
}
