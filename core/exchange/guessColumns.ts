import {
  type CellValue,
  readAttachmentKind,
  readCount,
  readDropSurface,
  readLengthM,
  readNumber,
  readSurface,
  readUnitKind,
  readVolts,
  readYesNo,
} from "./cellValue.ts";
import { layerHeading } from "./exportedRows.ts";
import { type BareHeading, bareHeading } from "./headingUnit.ts";
import type { ImportField, ValueKind } from "./importField.ts";
import { importFields } from "./importFields.ts";
import type { ImportKind } from "./importOptions.ts";
import { parsePoleSize } from "./poleHeight.ts";
import { readForceN, readSide, readStructureKind, readWireKind } from "./siteValue.ts";
import type { Table } from "./table.ts";

/** The column a field is thought to be in. */
export type ColumnGuess = {
  readonly heading: string;
  /** 1 where the heading is the field's own name, less where it only holds it. */
  readonly confidenceFrac: number;
  readonly why: string;
};

const sampleCount = 60;
/** A shorter title inside a heading says nothing: "addr" is in every part of an address. */
const leastTitleLength = 4;
const leastConfidenceFrac = 0.3;
/** Headings that only hold a title rank after those that are one. */
const withinRank = 100;

type Candidate = ColumnGuess & { readonly field: string; readonly rank: number };

/**
 * Which column each field of an import is most likely in, by its heading and by whether its cells can be read as that field.
 * A column serves one field. Fields without a likely column are left out.
 */
export function guessColumns(table: Table, kind: ImportKind): Readonly<Record<string, ColumnGuess>> {
  const columns = table.headings.flatMap((heading, index) =>
    heading === layerHeading ? [] : { heading, bare: bareHeading(heading), cells: sample(table, index) },
  );
  const candidates = importFields[kind]
    .map(withKeys)
    .flatMap((field) => columns.flatMap((column) => candidate(field, column) ?? []));
  candidates.sort((a, b) => b.confidenceFrac - a.confidenceFrac || a.rank - b.rank);
  const guesses = new Map<string, ColumnGuess>();
  const taken = new Set<string>();
  for (const { field, heading, confidenceFrac, why } of candidates) {
    if (guesses.has(field) || taken.has(heading)) continue;
    guesses.set(field, { heading, confidenceFrac, why });
    taken.add(heading);
  }
  return Object.fromEntries(guesses);
}

function sample(table: Table, column: number): string[] {
  const filled = table.rows.map((row) => row.cells[column] ?? "").filter((cell) => cell.trim() !== "");
  return filled.slice(0, sampleCount);
}

type SoughtField = ImportField & { readonly keys: readonly string[] };

/** A field with its titles as headings are compared, found once for all columns. */
function withKeys(field: ImportField): SoughtField {
  return { ...field, keys: field.titles.map((title) => bareHeading(title).wholeKey) };
}

type Column = { readonly heading: string; readonly bare: BareHeading; readonly cells: readonly string[] };

function candidate(field: SoughtField, { heading, bare, cells }: Column): Candidate | null {
  const named = nameMatch(field, bare);
  if (named === null) return null;
  const readFrac = cells.filter((cell) => canRead(field.kind, cell)).length / Math.max(1, cells.length);
  const isReadable = cells.length === 0 || readFrac >= 0.5;
  const isOwnName = named.rank < withinRank;
  // A column the import cannot do without is better shown with its bad cells than said to be missing.
  if (!isReadable && !(field.required && isOwnName)) return null;
  const distinctFrac = field.kind === "tag" ? new Set(cells).size / Math.max(1, cells.length) : 1;
  const evidenceFrac = cells.length === 0 || !isReadable ? 0.5 : distinctFrac;
  const confidenceFrac = Math.round(named.confidenceFrac * evidenceFrac * 100) / 100;
  if (confidenceFrac < leastConfidenceFrac) return null;
  const why = cells.length === 0 ? `${named.why}; the column is empty` : named.why;
  return { field: field.field, heading, confidenceFrac, why, rank: named.rank };
}

function nameMatch(
  field: SoughtField,
  bare: BareHeading,
): { confidenceFrac: number; why: string; rank: number } | null {
  const exact = field.keys.findIndex(
    (key) => key === bare.wholeKey || key === bare.key || (takesUnit(field.kind) && isWithUnit(bare.key, key)),
  );
  if (exact >= 0) {
    const confidenceFrac = Math.max(0.6, 1 - exact * 0.03);
    return { confidenceFrac, why: `"${field.titles[exact]}" is a usual heading for it`, rank: exact };
  }
  const within = field.titles.findIndex(
    (title) => title.length > leastTitleLength && containsWords(bare.words, title.split(" ")),
  );
  if (within < 0) return null;
  return {
    confidenceFrac: Math.max(0.3, 0.5 - within * 0.03),
    why: `the heading has "${field.titles[within]}" in it`,
    rank: withinRank + within,
  };
}

function takesUnit(kind: ValueKind): boolean {
  return kind === "length" || kind === "poleLength" || kind === "volts" || kind === "force";
}

/** A unit run into the heading: `heightft`, or a voltage's `kv`. */
function isWithUnit(key: string, titleKey: string): boolean {
  return ["ft", "m", "kv", "v", "lbf", "n", "kn"].some((unit) => key === `${titleKey}${unit}`);
}

function containsWords(words: readonly string[], sought: readonly string[]): boolean {
  return words.some((_, start) => sought.every((word, offset) => words[start + offset] === word));
}

function canRead(kind: ValueKind, cell: string): boolean {
  return readers[kind](cell).ok;
}

const readers: Readonly<Record<ValueKind, (cell: string) => CellValue<unknown>>> = {
  text: (value) => ({ ok: true, value }),
  tag: (value) => ({ ok: true, value }),
  buildingName: (value) => (readUnitKind(value).ok ? { ok: false, what: "", accepted: "" } : { ok: true, value }),
  number: readNumber,
  length: (cell) => readLengthM(cell, "m"),
  poleLength: (cell) => (parsePoleSize(cell) ? { ok: true, value: null } : readLengthM(cell, "m")),
  count: readCount,
  yesNo: readYesNo,
  volts: (cell) => readVolts(cell, false),
  unitKind: readUnitKind,
  attachmentKind: readAttachmentKind,
  surface: readSurface,
  dropSurface: readDropSurface,
  structureKind: readStructureKind,
  side: readSide,
  wireKind: readWireKind,
  force: (cell) => readForceN(cell, "N"),
};
