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
  type Entry = { readonly order: number; readonly outline: readonly PaperPoint[]; readonly owner: T };
  const cells = new Map<string, Entry[]>();
  let count = 0;

  const near = (outline: readonly PaperPoint[]): readonly Entry[] => {
    const met = new Map<number, Entry>();
    for (const key of cellsOf(outline)) for (const entry of cells.get(key) ?? []) met.set(entry.order, entry);
    return [...met.values()].sort((a, b) => a.order - b.order);
  };

  return {
    add(outline, owner) {
      const entry = { order: count, outline, owner };
      count += 1;
      for (const key of cellsOf(outline)) {
        const cell = cells.get(key);
        if (cell) cell.push(entry);
        else cells.set(key, [entry]);
      }
    },
    touching: (outline) =>
      near(outline)
        .filter((entry) => outlinesTouch(entry.outline, outline))
        .map((entry) => entry.owner),
    isFree: (outline) => !near(outline).some((entry) => outlinesTouch(entry.outline, outline)),
  };
}

function cellsOf(outline: readonly PaperPoint[]): readonly string[] {
  const [left, bottom, right, top] = boundsOf(outline).map((one) => Math.floor(one / cellMm));
  const keys: string[] = [];
  for (let x = left ?? 0; x <= (right ?? 0); x += 1) {
    for (let y = bottom ?? 0; y <= (top ?? 0); y += 1) keys.push(`${x} ${y}`);
  }
  return keys;
}
