import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join } from "node:path";
import { inflateSync } from "node:zlib";
import type { FontFace } from "../../core/sheets/paper/measureText.ts";

/** The font files that drawings embed; the same that core/sheets/paper/fontMetrics.ts was measured from. */
const files: Readonly<Record<FontFace, string>> = {
  narrow: "@fontsource/barlow-condensed/files/barlow-condensed-latin-500-normal.woff",
  narrowBold: "@fontsource/barlow-condensed/files/barlow-condensed-latin-600-normal.woff",
  plain: "@fontsource/ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-400-normal.woff",
  plainBold: "@fontsource/ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-600-normal.woff",
  symbols: "dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf",
};

/**
 * Where each drawing font lies.
 *
 * @param folder  a folder that holds the font files by their own names; null looks into the installed packages
 */
export function drawingFonts(folder: string | null): Readonly<Record<FontFace, string>> {
  const { resolve } = createRequire(import.meta.url);
  const place = (file: string) => (folder === null ? resolve(file) : join(folder, basename(file)));
  return {
    narrow: place(files.narrow),
    narrowBold: place(files.narrowBold),
    plain: place(files.plain),
    plainBold: place(files.plainBold),
    symbols: place(files.symbols),
  };
}

const woffSignature = 0x774f4646;
const woffEntry = { first: 44, size: 20 } as const;
const sfntEntry = { first: 12, size: 16 } as const;

/**
 * A font file as plain sfnt bytes; web fonts are unpacked once here, because the PDF library unpacks a table again at every glyph.
 *
 * @source WOFF file format 1.0, W3C recommendation 13 December 2012, sections 3 to 5, from memory
 */
export function readFont(path: string): Buffer {
  const file = readFileSync(path);
  if (file.readUInt32BE(0) !== woffSignature) return file;
  const tableCount = file.readUInt16BE(12);
  const tables = Array.from({ length: tableCount }, (_, index) =>
    unpackTable(file, woffEntry.first + index * woffEntry.size),
  );
  const head = Buffer.alloc(sfntEntry.first + tableCount * sfntEntry.size);
  file.copy(head, 0, 4, 8);
  const log = Math.floor(Math.log2(tableCount));
  head.writeUInt16BE(tableCount, 4);
  head.writeUInt16BE(16 * 2 ** log, 6);
  head.writeUInt16BE(log, 8);
  head.writeUInt16BE(16 * (tableCount - 2 ** log), 10);
  let offset = head.length;
  for (const [index, { tag, checksum, bytes }] of tables.entries()) {
    const at = sfntEntry.first + index * sfntEntry.size;
    tag.copy(head, at);
    checksum.copy(head, at + 4);
    head.writeUInt32BE(offset, at + 8);
    head.writeUInt32BE(bytes.length, at + 12);
    offset += paddedLength(bytes);
  }
  return Buffer.concat([head, ...tables.map(({ bytes }) => Buffer.concat([bytes], paddedLength(bytes)))]);
}

function unpackTable(file: Buffer, at: number) {
  const [offset, packedLength, length] = [4, 8, 12].map((shift) => file.readUInt32BE(at + shift));
  const packed = file.subarray(offset, (offset ?? 0) + (packedLength ?? 0));
  const bytes = packedLength === length ? packed : inflateSync(packed);
  return { tag: file.subarray(at, at + 4), checksum: file.subarray(at + 16, at + 20), bytes };
}

function paddedLength(bytes: Buffer): number {
  return Math.ceil(bytes.length / 4) * 4;
}
