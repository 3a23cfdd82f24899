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

/** A strip moved up or down so that its content lies in the middle of a box. */
function rowOn(strip: Strip, box: PaperBox): PlanRow {
  const up = (box.bottom + box.top) / 2 - (strip.contentBounds[1] + strip.contentBounds[3]) / 2;
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
