import { useEffect, useMemo, useRef, useState } from "react";
import type { FigureRef } from "../../core/explain/explanation.ts";
import { runCommand } from "../app/edits.ts";
import { lookOnlyReason } from "../app/files.ts";
import { bringIntoView } from "../app/look.ts";
import type { RefKey } from "../app/ref.ts";
import { tell } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import type { EditEnd } from "./CellEditor.tsx";
import type { CellWish } from "./cellEdits.ts";
import { type Block, blockOf, htmlOf, tsvOf } from "./clipboard.ts";
import { cellText, headingOf } from "./columns/column.ts";
import { type Range, rangeBetween, type Spot } from "./gridSpot.ts";
import type { Kind } from "./kinds.ts";
import { continueSeries } from "./series.ts";
import { type CellEdits, useCellEdits } from "./useCellEdits.ts";
import type { Shown } from "./useRows.ts";
import { tableWords } from "./words.ts";

/** The text a cell's field starts with; whole where it replaces nothing yet. */
export type Editing = { readonly start: string; readonly isWhole: boolean };

/** The hand in the table: where it is, what it holds, what it does. */
export type Grid = {
  readonly active: Spot;
  readonly range: Range;
  readonly editing: Editing | null;
  readonly edits: CellEdits;
  readonly chosen: ReadonlySet<RefKey>;
  readonly select: (active: Spot, isExtended: boolean, isAll?: boolean) => void;
  /** The figure whose explanation is shown; null where none is. */
  readonly explained: FigureRef | null;
  readonly explain: () => void;
  readonly endExplain: () => void;
  readonly startEdit: (text: string | null) => void;
  readonly endEdit: (text: string, end: EditEnd) => void;
  readonly giveUp: () => void;
  readonly block: (hasHeadings: boolean) => Block;
  readonly copyTo: (data: DataTransfer, hasHeadings: boolean) => void;
  readonly paste: (text: string) => void;
  readonly fillDown: () => void;
  readonly fillTo: (bottom: number) => void;
  readonly clear: () => void;
  readonly addRow: () => void;
  readonly removeRows: () => void;
  readonly goToBad: () => void;
};

/** The hand in a table of a kind. */
export function useGrid(kind: Kind, shown: Shown): Grid {
  const session = useSession();
  const { rows, columns, given } = shown;
  const { plant } = given;
  const [active, setActive] = useState<Spot>(() => {
    const row = rowOfSelection(kind, shown, session.view.getState().selection);
    return { row: row < 0 && rows.length > 0 ? 0 : row, col: 0 };
  });
  const [anchor, setAnchor] = useState<Spot>(active);
  const [editing, setEditing] = useState<Editing | null>(null);
  const [explained, setExplained] = useState<FigureRef | null>(null);
  const edits = useCellEdits();
  const selection = useView((state) => state.selection);
  const chosen = useMemo(() => new Set(selection), [selection]);
  const ours = useRef<readonly RefKey[]>(selection);
  const range = rangeBetween(anchor, active);

  useEffect(
    () =>
      session.view.subscribe(({ selection: next }, before) => {
        if (next === before.selection || ours.current === next) return;
        const row = rowOfSelection(kind, shown, next);
        if (row < 0) return;
        setActive(({ col }) => ({ row, col }));
        setAnchor(({ col }) => ({ row, col }));
      }),
    [session, kind, shown],
  );

  const select = (next: Spot, isExtended: boolean, isAll = false): void => {
    const start = isAll ? { row: 0, col: 0 } : anchor;
    const from = (isAll || isExtended) && next.row >= 0 && start.row >= 0 ? start : next;
    setActive(next);
    setAnchor(from);
    setEditing(null);
    if (next.row < 0) return;
    const { top, bottom } = rangeBetween(from, next);
    const refs = [...new Set(rows.slice(top, bottom + 1).flatMap((id) => kind.refs(plant, id)))];
    ours.current = refs;
    session.view.setState({ selection: refs });
    const [first] = rows[next.row] === undefined ? [] : kind.refs(plant, rows[next.row] ?? "");
    if (first) bringIntoView(session, [first]);
  };

  const wish = (row: number, col: number, text: string): CellWish[] => {
    const [rowId, column] = [rows[row], columns[col]];
    return rowId === undefined || !column ? [] : [{ rowId, column, text }];
  };
  const textAt = (row: number, col: number): string => {
    const [rowId, column] = [rows[row], columns[col]];
    return rowId === undefined || !column ? "" : cellText(column, given, rowId);
  };
  const across = (from: Range, text: (row: number, col: number) => string): CellWish[] => {
    const wishes: CellWish[] = [];
    for (let row = from.top; row <= from.bottom; row += 1)
      for (let col = from.left; col <= from.right; col += 1)
        if (columns[col]?.write) wishes.push(...wish(row, col, text(row, col)));
    return wishes;
  };
  const counted = (verb: string) => (count: number) => `${verb} ${count} ${count === 1 ? "cell" : "cells"}`;

  const block = (hasHeadings: boolean): Block => {
    const shownCols = columns.slice(range.left, range.right + 1);
    const body = rows
      .slice(range.top, range.bottom + 1)
      .map((id) => shownCols.map((column) => cellText(column, given, id)));
    return hasHeadings ? [shownCols.map((column) => headingOf(column, given.units)), ...body] : body;
  };

  const explain = (): void => {
    const [rowId, column] = [rows[active.row], columns[active.col]];
    if (rowId === undefined || !column) return;
    const figure = column.explains?.(plant, rowId) ?? null;
    setExplained(figure);
    if (!figure) tell(session, `${column.heading}: ${column.write ? tableWords.typed : tableWords.computed}.`);
  };

  const startEdit = (text: string | null): void => {
    const [rowId, column] = [rows[active.row], columns[active.col]];
    if (rowId === undefined || !column) return;
    if (!column.write) {
      explain();
      return;
    }
    const reason = lookOnlyReason(session);
    if (reason !== null) {
      tell(session, reason);
      return;
    }
    const kept = edits.bad.get(`${rowId}\n${column.key}`)?.text;
    setEditing({ start: text ?? kept ?? cellText(column, given, rowId), isWhole: text === null });
  };

  const endEdit = (text: string, end: EditEnd): void => {
    setEditing(null);
    if (end === "all") {
      const column = { ...range, left: active.col, right: active.col };
      void edits.write(
        across(column, () => text),
        counted("Change"),
      );
      return;
    }
    void edits.write(wish(active.row, active.col, text), counted("Change"));
    const step = { down: [1, 0], up: [-1, 0], right: [0, 1], left: [0, -1], stay: null }[end];
    if (!step) return;
    const [down = 0, right = 0] = step;
    const row = Math.max(0, Math.min(rows.length - 1, active.row + down));
    select({ row, col: Math.max(0, Math.min(columns.length - 1, active.col + right)) }, false);
  };

  const paste = (text: string): void => {
    const lines = blockOf(text);
    const [first = []] = lines;
    if (range.bottom < 0 || lines.length === 0) return;
    const isOne = lines.length === 1 && first.length === 1;
    const wishes = isOne
      ? across(range, () => first[0] ?? "")
      : lines.flatMap((line, i) => line.flatMap((cell, j) => wish(range.top + i, range.left + j, cell)));
    const overCount = isOne ? 0 : Math.max(0, range.top + lines.length - rows.length);
    if (overCount > 0) tell(session, tableWords.noRoom(overCount));
    if (!isOne) {
      setAnchor({ row: range.top, col: range.left });
      setActive({
        row: Math.min(rows.length - 1, range.top + lines.length - 1),
        col: Math.min(columns.length - 1, range.left + Math.max(...lines.map((line) => line.length)) - 1),
      });
    }
    void edits.write(wishes, counted("Paste"));
  };

  const fillTo = (bottom: number): void => {
    const count = bottom - range.bottom;
    if (count <= 0) return;
    const wishes = Array.from({ length: range.right - range.left + 1 }, (_, i) => range.left + i).flatMap((col) => {
      const texts = Array.from({ length: range.bottom - range.top + 1 }, (_, i) => textAt(range.top + i, col));
      return continueSeries(texts, count).flatMap((text, i) => wish(range.bottom + 1 + i, col, text));
    });
    setAnchor({ row: range.top, col: range.left });
    setActive({ row: bottom, col: range.right });
    void edits.write(wishes, counted("Fill"));
  };

  return {
    active,
    range,
    editing,
    edits,
    chosen,
    select,
    explained,
    explain,
    endExplain: () => setExplained(null),
    startEdit,
    endEdit,
    giveUp: () => setEditing(null),
    block,
    copyTo(data, hasHeadings) {
      data.setData("text/plain", tsvOf(block(hasHeadings)));
      data.setData("text/html", htmlOf(block(hasHeadings)));
    },
    paste,
    fillDown: () =>
      void edits.write(
        across(range, (_, col) => textAt(range.top, col)),
        counted("Fill"),
      ),
    fillTo,
    clear: () =>
      void edits.write(
        across(range, () => ""),
        counted("Empty"),
      ),
    addRow() {
      const step = kind.add?.(plant, rows[active.row] ?? null);
      if (step) void runCommand(session, step.command, step.input);
      else tell(session, `A ${kind.thing} needs something of the route to be on; add that first.`);
    },
    removeRows() {
      const gone = rows.slice(range.top, range.bottom + 1).flatMap((id) => kind.row(plant, id) ?? []);
      if (gone.length > 0) void runCommand(session, "rows.remove", { rows: gone });
    },
    goToBad() {
      const spots = [...edits.bad.values()].flatMap((one) => {
        const spot = { row: rows.indexOf(one.rowId), col: columns.findIndex((column) => column.key === one.column) };
        return spot.row < 0 || spot.col < 0 ? [] : [spot];
      });
      const next = spots.find((one) => one.row > active.row || (one.row === active.row && one.col > active.col));
      const [first] = spots;
      const to = next ?? first;
      if (to) select(to, false);
    },
  };
}

/** The first row that stands for something chosen; -1 where none does. */
function rowOfSelection(kind: Kind, { rows, given }: Shown, selection: readonly RefKey[]): number {
  if (selection.length === 0) return -1;
  const chosen = new Set(selection);
  return rows.findIndex((id) => kind.refs(given.plant, id).some((ref) => chosen.has(ref)));
}
