import type { PaperPoint } from "./displayList.ts";
import { boundsOf, outlinesTouch } from "./orientedBox.ts";

/** Convex outlines on a sheet, found by where they lie. */
type Occupied<T> = {
  readonly add: (outline: readonly PaperPoint[], owner: T) => void;
  /** Owners of the outlines that share paper with this one, in the order they came. */
  readonly touching: (outline: readonly PaperPoint[]) => readonly T[];
  readonly isFree: (outline: readonly PaperPoint[]) => boolean;
};

/** Side of a cell, mm: about a label's width, so that a label meets few cells and a cell few labels. */
const cellMm = 12;

/** An empty sheet of paper. */
export function openOccupied<T>(): Occupied<T> {
  type Entry = { readonly order: number; readonly outline: readonly PaperPoint[]; readonly owner: T; search: number };
  const cells = new Map<number, Entry[]>();
  let count = 0;
  let searches = 0;

  /** Goes through what touches an outline, once each, in no order, until told to stop. */
  const eachTouching = (outline: readonly PaperPoint[], isLast: (entry: Entry) => boolean): void => {
    searches += 1;
    for (const key of cellsOf(outline)) {
      for (const entry of cells.get(key) ?? []) {
        if (entry.search === searches) continue;
        entry.search = searches;
        if (outlinesTouch(entry.outline, outline) && isLast(entry)) return;
      }
    }
  };

  return {
    add(outline, owner) {
      const entry = { order: count, outline, owner, search: 0 };
      count += 1;
      for (const key of cellsOf(outline)) {
        const cell = cells.get(key);
        if (cell) cell.push(entry);
        else cells.set(key, [entry]);
      }
    },
    touching(outline) {
      const met: Entry[] = [];
      eachTouching(outline, (entry) => {
        met.push(entry);
        return false;
      });
      return met.sort((a, b) => a.order - b.order).map((entry) => entry.owner);
    },
    isFree(outline) {
      let isFree = true;
      eachTouching(outline, () => {
        isFree = false;
        return true;
      });
      return isFree;
    },
  };
}

/** More cells than any paper is high. */
const rowStep = 2 ** 22;

function cellsOf(outline: readonly PaperPoint[]): readonly number[] {
  const [left, bottom, right, top] = boundsOf(outline);
  const [firstRow, lastRow] = [Math.floor(bottom / cellMm), Math.floor(top / cellMm)];
  const keys: number[] = [];
  for (let x = Math.floor(left / cellMm); x <= Math.floor(right / cellMm); x += 1) {
    for (let y = firstRow; y <= lastRow; y += 1) keys.push(x * rowStep + y);
  }
  return keys;
}
