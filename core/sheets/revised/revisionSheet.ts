import type { Revision } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { type Book, type Draft, terminalKey } from "../book.ts";
import type { Mark } from "../paper/displayList.ts";
import { panelHead, tableUnderHead } from "../paper/panel.ts";
import { columnBoxes, columnsAbreast, type Paper, type PaperBox } from "../paper/paper.ts";
import { drawTable } from "../paper/table.ts";
import { tableMm } from "../paper/tableCells.ts";
import { pageRows } from "../paper/tablePages.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { revisionsInOrder } from "../revisions.ts";
import type { ChangeGroup } from "./changeLines.ts";
import type { ChangeLine } from "./told.ts";

const revisionColumns: readonly Column[] = [
  { heading: "Revision", share: 14 },
  { heading: "Issued", share: 18 },
  { heading: "By", share: 30 },
  { heading: "Checked", share: 30 },
  { heading: "Reason", share: 110 },
  { heading: "Approved", share: 46 },
  { heading: "Void", share: 90 },
];
/** Revisions listed; the route file has all. */
const mostListed = 8;
const changeColumns: readonly Column[] = [
  { heading: "Change", share: 150, wraps: true },
  { heading: "Sheet", share: 24 },
];
const gapMm = 7;
const gutterMm = 10;
/** Least width of a column of changes, mm. */
const changesMm = 150;

type Changes = {
  /** What they are told against: a revision, or the design; null where there is none before. */
  readonly since: string | null;
  /** True where the sheet is there without a revision too. */
  readonly isAsBuilt: boolean;
  readonly groups: readonly ChangeGroup[];
  /** Key of the sheet that shows a change; undefined for what no sheet shows. */
  readonly sheetOf: (line: ChangeLine) => string | undefined;
};

/** Revisions issued and, line by line, what changed since the one before; none where nothing was issued. */
export function revisionDrafts(plant: Plant, { drawing }: Paper, changes: Changes): readonly Draft[] {
  const revisions = revisionsInOrder(plant);
  if (revisions.length === 0 && !changes.isAsBuilt) return [];
  const listed = revisions.slice(-mostListed);
  const listMm = listed.length === 0 ? 0 : tableMm(listed.length) + gapMm + 4.4;
  const below: PaperBox = { ...drawing, top: drawing.top - listMm };
  const changesBox = tableUnderHead(below);
  const boxes = columnBoxes(changesBox, columnsAbreast(changesBox, changesMm, gutterMm), gutterMm);
  const rows = changeRows(changes);
  const pages = pageRows(
    changeColumns,
    rows.map((one) => one.row),
    boxes[0] ?? below,
  );
  const sheetCount = Math.max(1, Math.ceil(pages.length / boxes.length));
  const lineOf = new Map(rows.map(({ row, line }) => [row, line]));
  const head = [
    ...(listed.length === 0
      ? []
      : [
          ...panelHead("Revisions issued", drawing),
          ...drawTable(revisionColumns, listed.map(revisionRow), tableUnderHead(drawing)).marks,
        ]),
    ...panelHead(changes.since === null ? "Changes" : changes.since, below),
  ];
  return Array.from({ length: sheetCount }, (_, index) => ({
    key: `revision ${index + 1}`,
    kind: "revision",
    title: sheetCount === 1 ? "Revisions and changes" : `Revisions and changes, ${index + 1} of ${sheetCount}`,
    scale: "none",
    draw: (book) => ({
      marks: [
        ...head,
        ...pages.slice(index * boxes.length, (index + 1) * boxes.length).flatMap((page, at): readonly Mark[] => {
          const filled = page.map((row) => withSheet(row, lineOf.get(row) ?? null, changes, book));
          return drawTable(changeColumns, filled, boxes[at] ?? below).marks;
        }),
      ],
    }),
  }));
}

function revisionRow(one: Revision): TableRow {
  const approved = one.approvedBy === "" ? "" : `${one.approvedIso}, ${one.approvedBy}`;
  const voided = one.voidedBy === "" ? "" : `${one.voidedIso}, ${one.voidedBy}: ${one.voidReason}`;
  return { cells: [one.letter, one.dateIso, one.by, one.checkedBy, one.reason, approved, voided] };
}

type TableLine = { readonly row: TableRow; readonly line: ChangeLine | null };

function changeRows({ since, groups }: Changes): readonly TableLine[] {
  if (since === null) return [{ row: { note: "No revision was issued before to compare with." }, line: null }];
  if (groups.length === 0) return [{ row: { note: "Nothing that a drawing shows." }, line: null }];
  return groups.flatMap(({ heading, lines }): readonly TableLine[] => [
    { row: { group: heading }, line: null },
    ...lines.map((line) => ({ row: { cells: [line.text, ""] }, line })),
  ]);
}

function withSheet(row: TableRow, line: ChangeLine | null, { sheetOf }: Changes, book: Book): TableRow {
  if (!(line && "cells" in row)) return row;
  const keys = [sheetOf(line), line.table === "terminal" && !line.isGone ? terminalKey(line.id) : undefined];
  const numbers = keys.flatMap((key) => (key === undefined ? [] : (book.numberOf(key) ?? [])));
  return { cells: [row.cells[0] ?? "", numbers.join(", ")] };
}
