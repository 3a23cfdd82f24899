import type { PaperBox } from "./paper.ts";

/** A thing with the paper it needs at least, mm. */
export type Need<T> = { readonly thing: T; readonly width: number; readonly height: number };

/** A thing and the part of a sheet it is drawn on. */
export type Shelved<T> = { readonly thing: T; readonly box: PaperBox };

/** On the last sheet a thing gets at most this many times what it needs. */
const mostOnLast = 1.25;

type Shelf<T> = readonly Need<T>[];

/** The paper that things may share on a sheet; its height may hang on which they are. */
export type Room<T> = (things: readonly T[]) => PaperBox;

/**
 * Things put on sheets in their order: beside each other on shelves, shelf under shelf, as many as fit. What is left of a sheet is
 * given to its shelves, and what is left of a shelf to its things; the last of several sheets keeps its white.
 *
 * @param gapMm  white between neighbours, mm
 */
export function shelved<T>(
  needs: readonly Need<T>[],
  room: Room<T>,
  gapMm: number,
): readonly (readonly Shelved<T>[])[] {
  const fits = (sheet: readonly Shelf<T>[]) => {
    const { left, bottom, right, top } = room(sheet.flat().map((one) => one.thing));
    return heightMm(sheet, gapMm) <= top - bottom && sheet.every((shelf) => widthMm(shelf, gapMm) <= right - left);
  };
  const sheets: (readonly Shelf<T>[])[] = [];
  for (const need of needs) {
    const sheet = sheets.at(-1) ?? [];
    const beside = [...sheet.slice(0, -1), [...(sheet.at(-1) ?? []), need]];
    const under = [...sheet, [need]];
    const grown = sheet.length === 0 ? undefined : [beside, under].find(fits);
    if (grown) sheets[sheets.length - 1] = grown;
    else sheets.push([[need]]);
  }
  return sheets.map((sheet, index) => {
    const isLastOfSeveral = index > 0 && index === sheets.length - 1;
    return placed(sheet, room(sheet.flat().map((one) => one.thing)), gapMm, isLastOfSeveral ? mostOnLast : null);
  });
}

function widthMm<T>(shelf: Shelf<T>, gapMm: number): number {
  return shelf.reduce((sum, one) => sum + one.width, 0) + (shelf.length - 1) * gapMm;
}

function shelfMm<T>(shelf: Shelf<T>): number {
  return Math.max(...shelf.map((one) => one.height));
}

function heightMm<T>(sheet: readonly Shelf<T>[], gapMm: number): number {
  return sheet.reduce((sum, shelf) => sum + shelfMm(shelf), 0) + (sheet.length - 1) * gapMm;
}

function placed<T>(
  sheet: readonly Shelf<T>[],
  whole: PaperBox,
  gapMm: number,
  most: number | null,
): readonly Shelved<T>[] {
  const grown = (leftMm: number, neededMm: number) => (most ? Math.min(leftMm, neededMm * (most - 1)) : leftMm);
  const higherMm = (whole.top - whole.bottom - heightMm(sheet, gapMm)) / sheet.length;
  let { top } = whole;
  return sheet.flatMap((shelf) => {
    const bottom = top - shelfMm(shelf) - grown(higherMm, shelfMm(shelf));
    const widerMm = (whole.right - whole.left - widthMm(shelf, gapMm)) / shelf.length;
    let { left } = whole;
    const boxes = shelf.map(({ thing, width }) => {
      const box = { left, bottom, right: left + width + grown(widerMm, width), top };
      left = box.right + gapMm;
      return { thing, box };
    });
    top = bottom - gapMm;
    return boxes;
  });
}
