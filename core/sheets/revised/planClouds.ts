import type { PaperPoint } from "../displayList.ts";
import { stroke } from "../marks.ts";
import { boundsOf } from "../orientedBox.ts";
import type { PaperBox } from "../paper.ts";
import { drawnKey, type PlanDesk } from "../planDesk.ts";
import { toPaper } from "../view.ts";
import type { PlacedChange } from "./changePlaces.ts";
import { bulgeMm, cloud, revisionTriangle, triangleMm } from "./cloud.ts";

/** White between what changed and its cloud, mm. */
const clearMm = 2;
/** Half the side of what has a place but no drawn extent of its own, such as a pole, mm. */
const plainMm = 2.6;

/** Clouds round what changed on a strip, each with its triangle; what changed close together has one cloud. */
export function drawClouds(desk: PlanDesk, changes: readonly PlacedChange[], letter: string): void {
  const boxes = changes.flatMap((one) => boxOf(desk, one) ?? []);
  for (const box of joined(boxes)) {
    desk.draw(cloud(box));
    for (const edge of edgesOf(box)) desk.placer.block(edge);
    drawTriangle(desk, box, letter);
  }
}

function boxOf(desk: PlanDesk, change: PlacedChange): PaperBox | null {
  if (!change.at) return null;
  const points = change.isGone ? undefined : desk.drawnAt.get(drawnKeyOf(desk, change));
  const [left, bottom, right, top] = boundsOf(points ?? around(toPaper(desk.strip.view, change.at)));
  const { box } = desk;
  const away = clearMm + bulgeMm;
  const inside = (value: number, low: number, high: number) => Math.min(high - away, Math.max(low + away, value));
  return {
    left: inside(left, box.left, box.right) - clearMm,
    right: inside(right, box.left, box.right) + clearMm,
    bottom: inside(bottom, box.bottom, box.top) - clearMm,
    top: inside(top, box.bottom, box.top) + clearMm,
  };
}

/** A drop shows at its house. */
function drawnKeyOf({ plant }: PlanDesk, { table, id }: PlacedChange): string {
  const drop = table === "drop" ? plant.row("drop", id) : undefined;
  return drop ? drawnKey("livingUnit", drop.livingUnitId) : drawnKey(table, id);
}

function around([x, y]: PaperPoint): readonly PaperPoint[] {
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

function drawTriangle(desk: PlanDesk, { left, bottom, right, top }: PaperBox, letter: string): void {
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
