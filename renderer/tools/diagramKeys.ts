import type { KeyboardEvent } from "react";
import type { Plant } from "../../core/plant/plant.ts";
import { placeOfRef } from "../app/look.ts";
import type { Session } from "../app/session.ts";
import { stepTo } from "../canvas/gesture.ts";
import { screenPoint } from "../canvas/hitTest.ts";
import type { Picture } from "../canvas/paint.ts";
import { type Direction, nearestPole, neighbour } from "../canvas/walk.ts";
import { titleOf } from "../panels/words.ts";
import { runArrangement } from "./arrange/arrange.ts";
import { openExact } from "./exact.ts";
import { isShownKind } from "./kinds.ts";
import { nudge, nudgedNow } from "./nudge.ts";

const arrows: Readonly<Record<string, Direction>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
};

/** Steps of a nudge while Shift is held. */
const manySteps = 10;

/**
 * Keys of the diagram itself: arrows nudge what is chosen and else walk from pole to pole; with Alt they walk over terminals
 * too. While a terminal is dragged a figure opens the field for the exact distance. The menu key opens the menu of what is chosen.
 */
export function pressOnDiagram(session: Session, plant: Plant, picture: Picture, event: KeyboardEvent): void {
  const isMod = event.ctrlKey || event.metaKey;
  const direction = arrows[event.key];
  const { arranging } = session.view.getState();
  if (direction && !isMod) {
    event.preventDefault();
    const nudged = event.altKey ? null : nudgedNow(session);
    if (nudged) void nudge(session, nudged, direction, event.shiftKey ? manySteps : 1);
    else walk(session, plant, picture, direction, event.altKey);
  } else if (/^[\d.]$/.test(event.key) && session.view.getState().hand?.kind === "terminal") {
    event.preventDefault();
    event.stopPropagation();
    openExact(session, event.key);
  } else if (event.key === "Enter" && arranging) {
    event.preventDefault();
    event.stopPropagation();
    void runArrangement(session, arranging);
  } else if (event.key === "ContextMenu" || (event.key === "F10" && event.shiftKey)) {
    event.preventDefault();
    openMenu(session, picture, event.currentTarget);
  }
}

function walk(session: Session, plant: Plant, picture: Picture, direction: Direction, isOverAll: boolean): void {
  const { scene, view } = picture;
  const { selection, kinds } = session.view.getState();
  const isShown = (kind: "pole" | "terminal"): boolean => isShownKind(kinds, kind);
  const standing = selection.at(-1) ?? null;
  const from = standing ? placeOfRef(plant, standing, scene.places) : null;
  const ref = from
    ? neighbour(scene, from, direction, standing, isOverAll, isShown)
    : isShown("pole")
      ? nearestPole(scene, view.centreEastM, view.centreNorthM)
      : null;
  if (ref) stepTo(session, ref, titleOf(plant, ref));
}

/** Opens the menu at the chosen thing, or in the middle where nothing is chosen, as the pointer would there. */
function openMenu(session: Session, picture: Picture, diagram: Element): void {
  const standing = session.view.getState().selection.at(-1);
  const point = standing === undefined ? null : screenPoint(picture, standing);
  const frame = diagram.getBoundingClientRect();
  const [x, y] = point ?? [frame.width / 2, frame.height / 2];
  const place = { clientX: frame.x + x, clientY: frame.y + y };
  diagram.dispatchEvent(new MouseEvent("contextmenu", { bubbles: true, cancelable: true, ...place }));
}
