import type { Pole } from "../model/tables.ts";
import { shownValue } from "./badRow.ts";
import { readCount, readYesNo } from "./cellValue.ts";
import type { ImportOptions } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import { unpackTags } from "./packedTags.ts";
import { aboveGroundOfLengthM, parsePoleSize } from "./poleHeight.ts";
import { type Place, readPlace } from "./readPlace.ts";
import { type ReadRows, type RowReader, readRows } from "./rowReader.ts";
import type { Table } from "./table.ts";

/** A pole as a file gives it; `columns` holds only what the file has a column for. */
export type PoleRow = {
  readonly fileLine: number;
  readonly tag: string;
  readonly place: Place;
  /** Tag of the pole its line starts from; empty where the file names none. */
  readonly fromTag: string;
  readonly columns: Partial<Omit<Pole, "id" | "tag" | "eastM" | "northM">>;
};

/** Reads poles. A tag that repeats is reported at its second row. */
export function readPoles(table: Table, map: ColumnMap, options: ImportOptions): ReadRows<PoleRow> {
  const firstLine = new Map<string, number>();
  const untagged = { count: 0 };
  let fromLengthCount = 0;
  let unknownHeightCount = 0;
  const read = readRows({ table, kind: "pole", map, options }, (row) => {
    const tag = readTag(row, options, untagged);
    const place = readPlace(row);
    const size = readSize(row, options);
    const columns = { ...readColumns(row), ...size.columns };
    if (tag === null || place === null || row.bad.length > 0) return null;
    const earlier = firstLine.get(tag);
    if (earlier !== undefined) {
      row.refuse(
        "tag",
        `The tag ${shownValue(tag)} is already on ${table.lineWord} ${earlier}.`,
        "a tag used once in the file",
      );
      return null;
    }
    firstLine.set(tag, row.line);
    fromLengthCount += size.isFromLength ? 1 : 0;
    unknownHeightCount += size.isUnknown ? 1 : 0;
    return { fileLine: row.line, tag, place, fromTag: row.text("fromTag"), columns };
  });
  const notes = [
    ...read.notes,
    ...(untagged.count > 0
      ? [`${untagged.count} poles without a tag are numbered ${options.numberUntagged}1 and on.`]
      : []),
    ...(fromLengthCount > 0
      ? [
          `Height above ground of ${fromLengthCount} poles is their length less 10 % and 2 ft set in the ground (common practice).`,
        ]
      : []),
    ...(unknownHeightCount > 0 ? [`${unknownHeightCount} pole heights of 0 are read as unknown.`] : []),
  ];
  return { ...read, notes };
}

function readTag(row: RowReader, options: ImportOptions, untagged: { count: number }): string | null {
  const tag = row.text("tag");
  if (tag.length > 200) row.refuse("tag", "The tag is too long.", "at most 200 characters");
  if (tag !== "") return tag;
  if (options.numberUntagged === undefined) {
    row.refuse("tag", "The pole has no tag.", "a tag, or a prefix by which poles without one are numbered");
    return null;
  }
  untagged.count += 1;
  return `${options.numberUntagged}${untagged.count}`;
}

function readColumns(row: RowReader): PoleRow["columns"] {
  const order = row.value("order", readCount);
  const groundM = row.lengthM("ground");
  const terminalAllowed = row.value("terminalAllowed", readYesNo);
  const note = [row.text("note"), unpackTags(row.text("otherTags"))].filter((part) => part !== "").join("; ");
  return {
    ...(row.has("owner") ? { owner: row.text("owner") } : {}),
    ...(row.has("line") ? { line: row.text("line") } : {}),
    ...(row.has("order") ? { order: order ?? 0 } : {}),
    ...(row.has("ground") ? { groundM } : {}),
    ...(terminalAllowed === null ? {} : { terminalAllowed }),
    ...(row.has("note") || row.has("otherTags") ? { note } : {}),
  };
}

type ReadSize = {
  readonly columns: Pick<PoleRow["columns"], "aboveGroundM" | "poleClass">;
  readonly isFromLength: boolean;
  readonly isUnknown: boolean;
};

/** Height and class, from columns of their own or from one such as 45-4. */
function readSize(row: RowReader, options: ImportOptions): ReadSize {
  const size = parsePoleSize(row.text("poleLength")) ?? parsePoleSize(row.text("poleClass"));
  const isSizeInLength = parsePoleSize(row.text("poleLength")) !== null;
  const isSizeInClass = parsePoleSize(row.text("poleClass")) !== null;
  const above = row.lengthM("aboveGround");
  const length = isSizeInLength ? null : row.lengthM("poleLength");
  refuseNegative(row, "aboveGround", above);
  refuseNegative(row, "poleLength", length);
  const poleClass = isSizeInClass || row.text("poleClass") === "" ? (size?.poleClass ?? "") : row.text("poleClass");
  const classColumn = row.has("poleClass") || size !== null ? { poleClass } : {};
  const isUnknown = above === 0 || length === 0;
  if (above !== null && above > 0)
    return { columns: { ...classColumn, aboveGroundM: above }, isFromLength: false, isUnknown };
  const given = length ?? size?.lengthM ?? null;
  if (given === null || !(given > 0)) {
    const isAsked = row.has("aboveGround") || row.has("poleLength");
    return { columns: { ...classColumn, ...(isAsked ? { aboveGroundM: null } : {}) }, isFromLength: false, isUnknown };
  }
  const isPlain = !isSizeInLength && length !== null && options.heightIs === "aboveGround";
  const aboveGroundM = isPlain ? given : aboveGroundOfLengthM(given);
  if (aboveGroundM === null)
    row.refuse("poleLength", "A pole of this length would stand wholly in the ground.", "a pole length over 3 ft");
  return { columns: { ...classColumn, aboveGroundM }, isFromLength: !isPlain, isUnknown };
}

function refuseNegative(row: RowReader, field: string, valueM: number | null): void {
  if (valueM !== null && valueM < 0)
    row.refuse(field, "A height cannot be negative.", "a height of 0 (unknown) or more");
}
