import type { PaperBox } from "./paper.ts";
import { betweenMm, halves } from "./stripScale.ts";
import type { Strip } from "./strips.ts";

/** A strip and the part of a sheet it is drawn on. */
export type PlanRow = { readonly strip: Strip; readonly box: PaperBox };

/** White that labels take over and under a line and its houses, and beyond its ends, where strips share a sheet, mm. */
const labelWhiteMm = { over: 30, beyond: 42 } as const;
/** Smallest part of a sheet that holds a strip's heading and its north, mm. */
const leastMm = { width: 185, height: 95 } as const;

/** What a strip needs of a sheet, mm. */
type Need = { readonly strip: Strip; readonly width: number; readonly height: number };

/** Strips put on sheets in their order: as many under each other as are low enough, and short runs beside each other. */
export function planRows(cut: readonly Strip[], whole: PaperBox): readonly (readonly PlanRow[])[] {
  const sheets: Need[][][] = [];
  for (const strip of cut) {
    const need = needOf(strip, whole);
    const sheet = sheets.at(-1);
    const shelf = sheet?.at(-1);
    if (shelf && sheet && fitsBeside(sheet, shelf, need, whole)) shelf.push(need);
    else if (sheet && heightMm([...sheet, [need]]) <= whole.top - whole.bottom) sheet.push([need]);
    else sheets.push([[need]]);
  }
  return sheets.map((shelves) => placed(shelves, whole));
}

/** A strip with match lines takes the whole width, so that the next lies under it. */
function needOf(strip: Strip, whole: PaperBox): Need {
  const { contentBounds: bounds, before, after } = strip;
  const [wholeWidth, wholeHeight] = [whole.right - whole.left, whole.top - whole.bottom];
  const isRun = before === null && after === null;
  const width = isRun ? bounds[2] - bounds[0] + 2 * labelWhiteMm.beyond : wholeWidth;
  const [upper] = halves(whole);
  const halfMm = upper.top - upper.bottom;
  const contentMm = bounds[3] - bounds[1];
  const height = contentMm > halfMm ? wholeHeight : Math.min(halfMm, contentMm + 2 * labelWhiteMm.over);
  return {
    strip,
    width: Math.min(wholeWidth, Math.max(leastMm.width, width)),
    height: Math.min(wholeHeight, Math.max(leastMm.height, height)),
  };
}

function fitsBeside(
  sheet: readonly (readonly Need[])[],
  shelf: readonly Need[],
  need: Need,
  { left, bottom, right, top }: PaperBox,
): boolean {
  const grown = [...shelf, need];
  return widthMm(grown) <= right - left && heightMm([...sheet.slice(0, -1), grown]) <= top - bottom;
}

function widthMm(shelf: readonly Need[]): number {
  return shelf.reduce((sum, one) => sum + one.width, 0) + (shelf.length - 1) * betweenMm;
}

function shelfMm(shelf: readonly Need[]): number {
  return Math.max(...shelf.map((one) => one.height));
}

function heightMm(shelves: readonly (readonly Need[])[]): number {
  return shelves.reduce((sum, shelf) => sum + shelfMm(shelf), 0) + (shelves.length - 1) * betweenMm;
}

/** Strips in their parts of a sheet, which together take all of it. */
function placed(shelves: readonly (readonly Need[])[], whole: PaperBox): readonly PlanRow[] {
  const moreMm = (whole.top - whole.bottom - heightMm(shelves)) / shelves.length;
  let { top } = whole;
  return shelves.flatMap((shelf) => {
    const bottom = top - shelfMm(shelf) - moreMm;
    const widerMm = (whole.right - whole.left - widthMm(shelf)) / shelf.length;
    let { left } = whole;
    const rows = shelf.map(({ strip, width }) => {
      const right = left + width + widerMm;
      const row = rowOn(strip, { left, bottom, right, top }, shelf.length > 1);
      left = right + betweenMm;
      return row;
    });
    top = bottom - betweenMm;
    return rows;
  });
}

/** White kept over and under a line whose houses reach farther than the box, mm. */
const lineWhiteMm = 30;

/**
 * How far a strip is moved up so that its content lies in the middle of a box, mm; where that is higher than the box, only as far as the
 * line itself stays in it.
 */
function upMm({ contentBounds, lineBounds }: Strip, box: PaperBox): number {
  const middle = (box.bottom + box.top) / 2;
  const centred = middle - (contentBounds[1] + contentBounds[3]) / 2;
  const least = box.bottom + lineWhiteMm - lineBounds[1];
  const most = box.top - lineWhiteMm - lineBounds[3];
  return least > most ? middle - (lineBounds[1] + lineBounds[3]) / 2 : Math.min(most, Math.max(least, centred));
}

/** A strip moved to its place in a box; sideways only where the box is not as wide as the one it was cut for. */
function rowOn(strip: Strip, box: PaperBox, isBeside: boolean): PlanRow {
  const up = upMm(strip, box);
  const [contentLeft, , contentRight] = strip.contentBounds;
  const along = isBeside ? (box.left + box.right - contentLeft - contentRight) / 2 : 0;
  const [x, y] = strip.view.paper;
  const moved = ([left, bottom, right, top]: Strip["lineBounds"]): Strip["lineBounds"] => [
    left + along,
    bottom + up,
    right + along,
    top + up,
  ];
  const view = { ...strip.view, paper: [x + along, y + up] as const };
  return {
    strip: { ...strip, view, lineBounds: moved(strip.lineBounds), contentBounds: moved(strip.contentBounds) },
    box,
  };
}
