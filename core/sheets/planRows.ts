import type { PaperBox } from "./paper.ts";
import { halves } from "./stripScale.ts";
import type { Strip } from "./strips.ts";

/** A strip and the part of a sheet it is drawn on. */
export type PlanRow = { readonly strip: Strip; readonly box: PaperBox };

/** Strips put on sheets: two that are low enough share one, the earlier above. */
export function planRows(cut: readonly Strip[], whole: PaperBox): readonly (readonly PlanRow[])[] {
  const [upper, lower] = halves(whole);
  const isLow = (strip: Strip | undefined) =>
    strip !== undefined && strip.contentBounds[3] - strip.contentBounds[1] <= upper.top - upper.bottom;
  const sheets: PlanRow[][] = [];
  for (let index = 0; index < cut.length; index += 1) {
    const [strip, next] = [cut[index], cut[index + 1]];
    if (!strip) continue;
    if (next && isLow(strip) && isLow(next)) {
      sheets.push([rowOn(strip, upper), rowOn(next, lower)]);
      index += 1;
    } else sheets.push([rowOn(strip, isLow(strip) && sheets.some((one) => one.length > 1) ? upper : whole)]);
  }
  return sheets;
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

/** A strip moved up or down to its place in a box. */
function rowOn(strip: Strip, box: PaperBox): PlanRow {
  const up = upMm(strip, box);
  const [x, y] = strip.view.paper;
  const moved = (bounds: Strip["lineBounds"]): Strip["lineBounds"] => [
    bounds[0],
    bounds[1] + up,
    bounds[2],
    bounds[3] + up,
  ];
  const view = { ...strip.view, paper: [x, y + up] as const };
  return {
    strip: { ...strip, view, lineBounds: moved(strip.lineBounds), contentBounds: moved(strip.contentBounds) },
    box,
  };
}
