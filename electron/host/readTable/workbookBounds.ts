import { Unzip } from "fflate";
import { archiveChecksums, crc32 } from "./archiveChecksums.ts";
import { unpackPieces } from "./unpackPieces.ts";

/** Most cells of one sheet, those between its first and its farthest, empty ones too: a reader holds a place for each. */
const mostCells = 4_000_000;
/** The last row a sheet has. An empty row costs a reader as much as ten cells, so that more of them, however narrow, fill the memory. */
const lastRow = 1_048_576;

/** What keeps a workbook from being read: too much of something, or a part that is not as it was packed; null where nothing does. */
export type WorkbookExcess = "bytes" | "cells" | "damage" | null;

/**
 * Whether a workbook unpacks whole and within bounds, found without holding more than a piece of it: a few kilobytes can unpack to gigabytes, or
 * name one cell so far out that the empty ones before it fill the memory.
 *
 * Bytes that are no archive are within bounds; reading them will tell.
 *
 * @param largestUnpackedBytes  most that its parts may come to together
 */
export function workbookExcess(bytes: Uint8Array, largestUnpackedBytes: number): WorkbookExcess {
  let excess: WorkbookExcess = null;
  let unpackedBytes = 0;
  const checksums = archiveChecksums(bytes);
  const unzip = new Unzip((part) => {
    const farthest = /(?<!sharedStrings)\.xml$/i.test(part.name) ? farthestCell() : null;
    let checksum = 0;
    part.ondata = (_fault, piece, isLast) => {
      unpackedBytes += piece?.length ?? 0;
      if (piece) checksum = crc32(piece, checksum);
      if (isLast && (checksums.get(part.name) ?? checksum) !== checksum) excess ??= "damage";
      if (unpackedBytes > largestUnpackedBytes) excess = "bytes";
      else if (piece && farthest && farthest(piece) > mostCells) excess ??= "cells";
      if (excess) part.terminate();
    };
    part.start();
  });
  unpackPieces(unzip, bytes, () => excess !== null);
  return excess;
}

/**
 * Counts the cells up to the farthest a part names, piece by piece.
 *
 * @returns infinity where a place is no place, which the reader would count to all the same
 */
function farthestCell(): (piece: Uint8Array) => number {
  let rest = "";
  let rows = 1;
  let columns = 1;
  return (piece) => {
    const text = rest + Buffer.from(piece).toString("latin1");
    const end = text.lastIndexOf("<") + 1;
    rest = text.slice(Math.max(0, end - 1));
    if (rest.length > longestTag) return Number.POSITIVE_INFINITY;
    for (const [, , place = ""] of text.slice(0, end).matchAll(places)) {
      const [, letters = "", row] = /^([A-Z]{0,3})(\d{1,7})$/.exec(place) ?? [];
      if (row === undefined || Number(row) > lastRow) return Number.POSITIVE_INFINITY;
      rows = Math.max(rows, Number(row));
      columns = Math.max(columns, columnNumber(letters));
    }
    return rows * columns;
  };
}

/** Every ` r="XFD1048576"` of a row or a cell. */
const places = /(?<![\w:])r\s*=\s*(["'])(.*?)\1/gs;
/** A tag and the text before the next one; a cell holds at most 32,767 letters. */
const longestTag = 1_000_000;

function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}
