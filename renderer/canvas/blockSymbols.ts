import { bandReachPx, bandWidthPx } from "./drawCrossings.ts";
import { findingPoint } from "./drawFindings.ts";
import { terminalOf } from "./drawHung.ts";
import { nail, nailFeet } from "./drawPins.ts";
import { dropLine } from "./dropLine.ts";
import { findingMarks } from "./findingMarks.ts";
import { coilPlacePx, terminalPlacePx } from "./hungPlace.ts";
import type { LabelGrid } from "./labelGrid.ts";
import { cableGapPx, housePx, ringPx } from "./level.ts";
import type { Picture } from "./paint.ts";
import { at } from "./spanMarks.ts";
import { screenX, screenY } from "./viewport.ts";

/** Marks where symbols and lines stand, so that no lettering lies on them. */
export function blockSymbols(picture: Picture, grid: LabelGrid): void {
  const { scene, view, level, findings, shown } = picture;
  const { spans, poles } = scene;
  for (const i of spans.index.within(shown)) {
    const from = [screenX(view, at(spans.fromEastM, i)), screenY(view, at(spans.fromNorthM, i))] as const;
    const to = [screenX(view, at(spans.toEastM, i)), screenY(view, at(spans.toNorthM, i))] as const;
    const frame = spans.frames[i];
    if (!frame) continue;
    for (let line = 0; line <= at(spans.cableCount, i); line += 1) {
      const gap = line === 0 ? 0 : cableGapPx(level, line - 1);
      const [dx, dy] = [frame.belowX * gap, frame.belowY * gap];
      grid.blockLine(from[0] + dx, from[1] + dy, to[0] + dx, to[1] + dy);
    }
  }
  const ring = ringPx(view) * 2;
  for (const i of poles.index.within(shown)) {
    const [x, y] = [screenX(view, at(poles.eastM, i)), screenY(view, at(poles.northM, i))];
    grid.block({ x, y, widthPx: ring, heightPx: ring, turnRad: 0 });
  }
  for (const i of scene.terminals.index.within(shown)) {
    const mark = scene.terminals.marks[i];
    if (mark) grid.block(terminalPlacePx(mark, view));
  }
  for (const i of scene.coils.index.within(shown)) {
    const mark = scene.coils.marks[i];
    if (mark) grid.block(coilPlacePx(mark, view, terminalOf(mark, scene.terminals)));
  }
  for (const i of scene.crossings.index.within(shown)) {
    const mark = scene.crossings.marks[i];
    if (!mark) continue;
    const turnRad = Math.atan2(mark.frame.alongY, mark.frame.alongX);
    const [x, y] = [screenX(view, mark.eastM), screenY(view, mark.northM)];
    grid.block({ x, y, widthPx: bandWidthPx(mark, view), heightPx: bandReachPx(level) * 2, turnRad });
  }
  for (const i of scene.drops.index.within(shown)) {
    const mark = scene.drops.marks[i];
    const line = mark && dropLine({ scene, view, level }, mark);
    if (line) grid.crossLine(...line);
  }
  for (const [x, y] of nailFeet(picture)) {
    const heightPx = nail.shankPx + nail.headPx;
    grid.block({ x, y: y - heightPx / 2, widthPx: nail.headPx * 2, heightPx, turnRad: 0 });
  }
  const house = housePx(view);
  for (const i of scene.houses.index.within(shown)) {
    const mark = scene.houses.marks[i];
    if (!mark) continue;
    const [x, y] = [screenX(view, mark.eastM), screenY(view, mark.northM)];
    grid.block({ x, y, widthPx: house, heightPx: house, turnRad: 0 });
  }
  for (const mark of findingMarks(findings, view.pxPerM)) {
    const [x, y] = findingPoint(mark, view);
    grid.block({ x, y, widthPx: 17, heightPx: 17, turnRad: 0 });
  }
}
