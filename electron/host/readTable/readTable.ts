import { readCsv } from "../../../core/exchange/readCsv.ts";
import { readGeojson } from "../../../core/exchange/readGeojson.ts";
import { readGpx } from "../../../core/exchange/readGpx.ts";
import { readKml } from "../../../core/exchange/readKml.ts";
import type { Table } from "../../../core/exchange/table.ts";
import { rootName } from "../../../core/exchange/walkXml.ts";
import { fail, type Result } from "../../../core/model/result.ts";
import { decodeText, type TextEncoding, textEncodings } from "./decodeText.ts";
import { readXlsx } from "./readXlsx.ts";
import { kmlPart, unpackKmz } from "./unpackKmz.ts";

/** Largest file that is taken in one import, bytes. */
export const largestFileBytes = 64 * 1024 * 1024;

/** How the bytes are to be read where the file does not say. */
export type ReadTableOptions = { readonly encoding?: TextEncoding; readonly sheet?: string };

/**
 * A file's bytes as a table. What the file is is told from its first bytes and then from its name: a workbook, KML (packed too), GPX,
 * GeoJSON, or delimited text. Never throws on what a file holds.
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
  if (startsWith(bytes, [0x50, 0x4b, 0x03, 0x04])) {
    const part = kmlPart(bytes);
    if (part === null && !/\.kmz$/i.test(name)) return readXlsx(name, bytes, options.sheet);
    const kml = unpackKmz(name, bytes, part, largestFileBytes);
    return kml.ok ? readText(name, kml.value, options.encoding) : kml;
  }
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    return fail(
      "old-workbook",
      "The file is a workbook of the old kind, or locked by a password.",
      name,
      "Save it as XLSX or CSV, without a password.",
    );
  }
  return readText(name, bytes, options.encoding);
}

function readText(name: string, bytes: Uint8Array, encoding?: TextEncoding): Result<Table> {
  const decoded = decodeText(name, bytes, encoding ?? declaredEncoding(bytes));
  if (!decoded.ok) return decoded;
  const { text, note } = decoded.value;
  const table = tableOfText(name, text);
  if (!table.ok || note === "") return table;
  return { ok: true, value: { ...table.value, notes: [note, ...table.value.notes] } };
}

function tableOfText(name: string, text: string): Result<Table> {
  if (isXml(name, text)) {
    const root = rootName(text);
    // without any element it is no XML, which the reader says
    if (root === "kml" || root === "") return readKml(name, text);
    if (root === "gpx") return readGpx(name, text);
    return fail(
      "not-table",
      "The file is XML or a web page, not a table.",
      name,
      "Give CSV, XLSX, GeoJSON, KML, KMZ or GPX.",
    );
  }
  return isJson(name, text) ? readGeojson(name, text) : readCsv(name, text, delimiterOf(name));
}

/** What XML says of itself; UTF-8 is tried first in any case. */
function declaredEncoding(bytes: Uint8Array): TextEncoding | undefined {
  const start = String.fromCharCode(...bytes.subarray(0, 200));
  const declared = /^<\?xml\s[^>]*?\bencoding\s*=\s*["']([\w-]+)/.exec(start)?.[1]?.toLowerCase();
  return textEncodings.find((one) => one === declared && !one.startsWith("utf-"));
}

function isXml(name: string, text: string): boolean {
  return /\.(?:kml|kmz|gpx)$/i.test(name) || /^\uFEFF?\s*</.test(text);
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
