import type { PaperBox } from "./paper.ts";

/** A thing and the part of a sheet it is drawn on. */
export type Stacked<T> = { readonly thing: T; readonly box: PaperBox };

/**
 * Things put one under the other in their order, as many to a sheet as fit; one that is higher than the box has a sheet to itself and
 * takes all of it.
 *
 * @param heightMm  what a thing needs, mm
 * @param gapMm     white between two of them, mm
 */
export function stacked<T>(
  things: readonly T[],
  heightMm: (thing: T) => number,
  box: PaperBox,
  gapMm: number,
): readonly (readonly Stacked<T>[])[] {
  const sheets: Stacked<T>[][] = [];
  let top = box.bottom;
  for (const thing of things) {
    const needsMm = Math.min(heightMm(thing), box.top - box.bottom);
    const last = sheets.at(-1);
    const isFresh = last === undefined || top - needsMm < box.bottom - 1e-6;
    if (isFresh) top = box.top;
    const placed = { thing, box: { ...box, top, bottom: top - needsMm } };
    if (isFresh) sheets.push([placed]);
    else last.push(placed);
    top -= needsMm + gapMm;
  }
  return sheets;
}
