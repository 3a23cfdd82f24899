import type { PaperPoint } from "../paper/displayList.ts";
import type { LabelDesk } from "../paper/labelDesk.ts";
import { stroke } from "../paper/marks.ts";
import { boundsOf } from "../paper/orientedBox.ts";
import type { PaperBox } from "../paper/paper.ts";
import { bulgeMm, cloud, revisionTriangle, triangleMm } from "./cloud.ts";

/** White between what changed and its cloud, mm. */
const clearMm = 2;
/** Half the side of what has a place but no drawn extent of its own, such as a pole on a plan, mm. */
const plainMm = 2.6;

type Desk = Pick<LabelDesk, "placer" | "draw">;

/** Clouds round boxes of what changed, each with its triangle; boxes close together have one cloud. */
export function drawCloudsRound(desk: Desk, boxes: readonly PaperBox[], letter: string): void {
  for (const box of joined(boxes)) {
    desk.draw(cloud(box));
    for (const edge of edgesOf(box)) desk.placer.block(edge);
    drawTriangle(desk, box, letter);
  }
}

/** The box of a cloud round points, its bows within the paper given. */
export function cloudBox(points: readonly PaperPoint[], within: PaperBox): PaperBox {
  const [left, bottom, right, top] = boundsOf(points);
  const away = clearMm + bulgeMm;
  const inside = (value: number, low: number, high: number) => Math.min(high - away, Math.max(low + away, value));
  return {
    left: inside(left, within.left, within.right) - clearMm,
    right: inside(right, within.left, within.right) + clearMm,
    bottom: inside(bottom, within.bottom, within.top) - clearMm,
    top: inside(top, within.bottom, within.top) + clearMm,
  };
}

/** Corners of what has a place but no extent. */
export function pointsRound([x, y]: PaperPoint): readonly PaperPoint[] {
  return [
    [x - plainMm, y - plainMm],
    [x + plainMm, y + plainMm],
  ];
}

/** Boxes too near each other are one box, and so on until none are. */
function joined(boxes: readonly PaperBox[]): readonly PaperBox[] {
  let kept: PaperBox[] = [];
  for (const box of boxes) {
    let grown = box;
    for (
      let met = kept.filter((one) => meet(one, grown));
      met.length > 0;
      met = kept.filter((one) => meet(one, grown))
    ) {
      kept = kept.filter((one) => !met.includes(one));
      grown = met.reduce(bothIn, grown);
    }
    kept.push(grown);
  }
  return kept;
}

/** Whether there is no room for a triangle between two clouds. */
function meet(a: PaperBox, b: PaperBox): boolean {
  const gap = 2 * bulgeMm + triangleMm.width;
  return a.left < b.right + gap && b.left < a.right + gap && a.bottom < b.top + gap && b.bottom < a.top + gap;
}

function bothIn(a: PaperBox, b: PaperBox): PaperBox {
  return {
    left: Math.min(a.left, b.left),
    right: Math.max(a.right, b.right),
    bottom: Math.min(a.bottom, b.bottom),
    top: Math.max(a.top, b.top),
  };
}

/** The paper a cloud's bows take, so that no label is put across them. */
function edgesOf({ left, bottom, right, top }: PaperBox): readonly (readonly PaperPoint[])[] {
  const strip = (l: number, b: number, r: number, t: number): readonly PaperPoint[] => [
    [l, b],
    [r, b],
    [r, t],
    [l, t],
  ];
  return [
    strip(left - bulgeMm, bottom - bulgeMm, right + bulgeMm, bottom),
    strip(left - bulgeMm, top, right + bulgeMm, top + bulgeMm),
    strip(left - bulgeMm, bottom, left, top),
    strip(right, bottom, right + bulgeMm, top),
  ];
}

function drawTriangle(desk: Desk, { left, bottom, right, top }: PaperBox, letter: string): void {
  const out = [bulgeMm + triangleMm.width / 2, bulgeMm + triangleMm.height / 2] as const;
  const corners = [
    [right + out[0], top],
    [left - out[0], top],
    [right + out[0], bottom],
    [left - out[0], bottom],
    [right, top + out[1]],
    [left, top + out[1]],
    [right, bottom - out[1]],
    [left, bottom - out[1]],
  ] as const;
  const candidates = [0, 3].flatMap((far) =>
    corners.map(([x, y], rank) => ({
      centre: [x + Math.sign(x - (left + right) / 2) * far, y + Math.sign(y - (bottom + top) / 2) * far] as const,
      turnRad: 0,
      cost: rank * 0.4 + far,
    })),
  );
  const placed = desk.placer.place({ ...triangleMm, anchor: [right, top], candidates });
  if (!placed) return;
  if (placed.leader) desk.draw([stroke("revisions", "fine", placed.leader)]);
  desk.draw(revisionTriangle(placed.box.centre, letter));
}
