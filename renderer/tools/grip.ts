import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import type { Session } from "../app/session.ts";
import { dropLine } from "../canvas/dropLine.ts";
import { hitAll } from "../canvas/hitTest.ts";
import type { Picture } from "../canvas/paint.ts";
import { at } from "../canvas/spanMarks.ts";
import { screenX, screenY } from "../canvas/viewport.ts";
import { isShownKind } from "./kinds.ts";

/** Something a press has hold of, with where the hand sits against the thing's own place, px. */
export type Grip = {
  readonly table: "terminal" | "pole" | "drop";
  readonly id: string;
  readonly dxPx: number;
  readonly dyPx: number;
};

/** How near the end of a drop must be taken hold of, px. */
const dropEndPx = 8;

/**
 * What a drag from a pixel would move, or null where it moves the ground.
 *
 * A terminal is taken by its bar. A pole is taken only once it is chosen, since a slip would falsify a survey; a drop by the ring
 * at its port, which shows while its living unit is chosen. From afar nothing is taken, nor a pole where the page is not the ground.
 */
export function gripAt(session: Session, picture: Picture, xPx: number, yPx: number): Grip | null {
  if (picture.level === "marks") return null;
  const { selection, kinds } = session.view.getState();
  const drop = isShownKind(kinds, "drop") ? dropEndAt(picture, selection, xPx, yPx) : null;
  if (drop) return drop;
  const hit = hitAll(picture, xPx, yPx)[0];
  if (!hit) return null;
  const { table, id } = splitRef(hit);
  if (table === "terminal") return gripOf(picture, table, id, xPx, yPx);
  const isOnGround = picture.scene.places.straight === null;
  return table === "pole" && isOnGround && selection.includes(hit) ? gripOf(picture, table, id, xPx, yPx) : null;
}

/** Drops of the chosen living units with where their ends at the port are on screen. */
export function dropEnds(
  picture: Picture,
  selection: readonly RefKey[],
): readonly { readonly id: string; readonly x: number; readonly y: number }[] {
  const { houses, drops } = picture.scene;
  const [only, ...more] = selection;
  if (only === undefined || more.length > 0 || picture.level === "marks") return [];
  const { table, id } = splitRef(only);
  const house = table === "livingUnit" ? houses.positionOf.get(id) : undefined;
  if (house === undefined) return [];
  return drops.marks.flatMap((drop) => {
    const line = drop.house === house ? dropLine(picture, drop) : null;
    return line ? [{ id: drop.id, x: line[0], y: line[1] }] : [];
  });
}

function dropEndAt(picture: Picture, selection: readonly RefKey[], xPx: number, yPx: number): Grip | null {
  const end = dropEnds(picture, selection).find(({ x, y }) => Math.hypot(x - xPx, y - yPx) <= dropEndPx);
  return end ? { table: "drop", id: end.id, dxPx: xPx - end.x, dyPx: yPx - end.y } : null;
}

function gripOf({ scene, view }: Picture, table: "terminal" | "pole", id: string, xPx: number, yPx: number): Grip {
  const i = table === "pole" ? scene.poles.ids.indexOf(id) : (scene.terminals.positionOf.get(id) ?? -1);
  const mark = table === "terminal" ? scene.terminals.marks[i] : undefined;
  const eastM = mark?.eastM ?? at(scene.poles.eastM, i);
  const northM = mark?.northM ?? at(scene.poles.northM, i);
  return { table, id, dxPx: xPx - screenX(view, eastM), dyPx: yPx - screenY(view, northM) };
}

/** The row a grip moves, as the selection names it. */
export function gripRef({ table, id }: Grip): RefKey {
  return refKey(table, id);
}
