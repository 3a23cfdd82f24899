import { cableGapPx } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { at } from "./spanMarks.ts";
import { screenX, screenY } from "./viewport.ts";

/** Strand as one line, each cable as its own line below it, other parties' wires as dashed hairlines above. */
export function drawSpans(pen: Pen, picture: Picture): void {
  const { scene, level, ink, shown } = picture;
  const visible = scene.spans.index.within(shown);
  pen.lineCap = "butt";
  const strung = visible.filter((i) => scene.spans.hasStrand[i]);
  const bare = visible.filter((i) => !scene.spans.hasStrand[i]);
  pen.strokeStyle = ink.ink;
  pen.lineWidth = level === "marks" ? 1.4 : 2;
  strokeAll(pen, picture, strung, 0);
  pen.lineWidth = 1;
  pen.setLineDash([2, 3]);
  strokeAll(pen, picture, bare, 0);
  pen.setLineDash([]);
  if (level === "marks") return;
  const most = visible.reduce((so, i) => Math.max(so, at(scene.spans.cableCount, i)), 0);
  for (let cable = 0; cable < most; cable += 1) {
    const carrying = visible.filter((i) => at(scene.spans.cableCount, i) > cable);
    strokeAll(pen, picture, carrying, cableGapPx(level, cable));
  }
  if (level === "symbols") return;
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 0.75;
  pen.setLineDash([5, 3]);
  const mostOwners = visible.reduce((so, i) => Math.max(so, scene.spans.otherOwners[i]?.length ?? 0), 0);
  for (let owner = 0; owner < mostOwners; owner += 1) {
    const running = visible.filter((i) => (scene.spans.otherOwners[i]?.length ?? 0) > owner);
    strokeAll(pen, picture, running, otherWireGapPx(owner));
  }
  pen.setLineDash([]);
}

/** Distance of the n-th other party's wire from the strand, px; negative above it. */
export function otherWireGapPx(position: number): number {
  return -5 - position * 3;
}

function strokeAll(pen: Pen, { scene: { spans }, view }: Picture, positions: readonly number[], belowPx: number): void {
  if (positions.length === 0) return;
  pen.beginPath();
  for (const i of positions) {
    const frame = spans.frames[i];
    if (!frame) continue;
    const dx = frame.belowX * belowPx;
    const dy = frame.belowY * belowPx;
    pen.moveTo(screenX(view, at(spans.fromEastM, i)) + dx, screenY(view, at(spans.fromNorthM, i)) + dy);
    pen.lineTo(screenX(view, at(spans.toEastM, i)) + dx, screenY(view, at(spans.toNorthM, i)) + dy);
  }
  pen.stroke();
}
