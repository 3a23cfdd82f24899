import type { PaperBox } from "../paper/paper.ts";
import { type Need, shelved } from "../paper/shelves.ts";
import { betweenMm, halves } from "./stripScale.ts";
import type { Strip } from "./strips.ts";

/** A strip and the part of a sheet it is drawn on. */
export type PlanRow = { readonly strip: Strip; readonly box: PaperBox };

/** White that labels take over and under a line and its houses, and beyond its ends, where strips share a sheet, mm. */
const labelWhiteMm = { over: 30, beyond: 42 } as const;
/** Smallest part of a sheet that holds a strip's heading and its north, mm. */
const leastMm = { width: 185, height: 95 } as const;

/** Strips put on sheets in their order: as many under each other as are low enough, and short runs beside each other. */
export function planRows(cut: readonly Strip[], whole: PaperBox): readonly (readonly PlanRow[])[] {
  const needs = cut.map((strip) => needOf(strip, whole));
  return shelved(needs, () => whole, betweenMm).map((parts) =>
    parts.map(({ thing, box }) => rowOn(thing, box, box.right - box.left < whole.right - whole.left - betweenMm)),
  );
}

/** A strip with match lines takes the whole width, so that the next lies under it. */
function needOf(strip: Strip, whole: PaperBox): Need<Strip> {
  const { contentBounds: bounds, before, after } = strip;
  const [wholeWidth, wholeHeight] = [whole.right - whole.left, whole.top - whole.bottom];
  const isRun = before === null && after === null;
  const width = isRun ? bounds[2] - bounds[0] + 2 * labelWhiteMm.beyond : wholeWidth;
  const [upper] = halves(whole);
  const halfMm = upper.top - upper.bottom;
  const contentMm = bounds[3] - bounds[1];
  const height = contentMm > halfMm ? wholeHeight : Math.min(halfMm, contentMm + 2 * labelWhiteMm.over);
  return {
    thing: strip,
    width: Math.min(wholeWidth, Math.max(leastMm.width, width)),
    height: Math.min(wholeHeight, Math.max(leastMm.height, height)),
  };
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
