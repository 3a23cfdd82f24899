import type { Point } from "../../core/plant/geometry.ts";
import { pointOnSpan } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { terminalPlace } from "../../core/plant/terminalView.ts";
import {
  type Box,
  blend,
  centreOn,
  fitTo,
  fullScalePxPerM,
  isShown,
  type Viewport,
  zoomAbout,
} from "../canvas/viewport.ts";
import { type RefKey, refKey, splitRef } from "./ref.ts";
import type { WindowFinding } from "./routeStore.ts";
import { openRouteOf, type Session } from "./session.ts";

const moveMs = 120;
const edgePx = 60;
const fitMarginPx = 56;

/** Shows the whole route; at once where it has just come into the window. */
export function fitAll(session: Session, isAtOnce = false): void {
  const box = routeBox(openRouteOf(session).plant);
  if (!box) return;
  const viewport = fitTo(session.view.getState().viewport, box, fitMarginPx);
  if (isAtOnce) session.view.setState({ viewport });
  else moveTo(session, viewport);
}

/** Zooms about the middle of the view. */
export function zoomBy(session: Session, factor: number): void {
  const { viewport } = session.view.getState();
  moveTo(session, zoomAbout(viewport, viewport.widthPx / 2, viewport.heightPx / 2, factor));
}

/** Chooses rows and shows them. */
export function chooseAndShow(session: Session, refs: readonly RefKey[], closerPxPerM = 0): void {
  session.view.setState({ selection: refs });
  bringIntoView(session, refs, closerPxPerM);
}

/** Goes to where a finding is and chooses what it is about. */
export function goToFinding(session: Session, finding: WindowFinding): void {
  const { plant } = openRouteOf(session);
  const [first] = finding.subjects.flatMap((one) => drawnRef(plant, refKey(one.table, one.id)) ?? []);
  session.view.setState({ selection: first ? [first] : [], sheets: null });
  const at = finding.at ?? (first ? placeOfRef(plant, first) : null);
  if (at) moveTo(session, centreOn(session.view.getState().viewport, at.eastM, at.northM, fullScalePxPerM * 1.5));
}

/** The row that stands on the diagram for this one: an attachment is seen at its pole, a drop at its terminal; null for none. */
export function drawnRef(plant: Plant, ref: RefKey): RefKey | null {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "attachment":
      return refKey("pole", plant.rowOf("attachment", id).poleId);
    case "drop":
      return refKey("terminal", plant.rowOf("drop", id).terminalId);
    case "splitter":
      return refKey("terminal", plant.rowOf("splitter", id).terminalId);
    case "fiberUse": {
      const { terminalId, closureId } = plant.rowOf("fiberUse", id);
      if (terminalId !== null) return refKey("terminal", terminalId);
      return closureId === null ? null : refKey("closure", closureId);
    }
    default:
      return placeOfRef(plant, ref) === null ? null : ref;
  }
}

/** Moves the view where none of these rows is well inside it. */
export function bringIntoView(session: Session, refs: readonly RefKey[], closerPxPerM = 0): void {
  const { plant } = openRouteOf(session);
  const places = refs.flatMap((ref) => placeOfRef(plant, ref) ?? []);
  const [first] = places;
  const { viewport } = session.view.getState();
  if (!first || viewport.widthPx === 0) return;
  const isClose = viewport.pxPerM >= closerPxPerM;
  if (isClose && places.some((one) => isShown(viewport, one.eastM, one.northM, edgePx))) return;
  moveTo(session, centreOn(viewport, first.eastM, first.northM, closerPxPerM));
}

/** Where a row is on the ground; null for what has no place or is gone. */
export function placeOfRef(plant: Plant, ref: RefKey): Point | null {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "pole":
    case "livingUnit":
      return plant.rowOf(table, id);
    case "terminal":
      return terminalPlace(plant, id);
    case "span":
      return pointOnSpan(plant, id, plant.rowOf("span", id).lengthM / 2);
    case "crossing":
    case "slack":
    case "closure": {
      const row = plant.rowOf(table, id);
      return pointOnSpan(plant, row.spanId, row.offsetM);
    }
    case "attachment":
      return plant.rowOf("pole", plant.rowOf("attachment", id).poleId);
    case "drop":
      return terminalPlace(plant, plant.rowOf("drop", id).terminalId);
    default:
      return null;
  }
}

/** Moves the view, in a moment that shows where it went; at once where the system asks for no motion. */
function moveTo(session: Session, target: Viewport): void {
  const from = session.view.getState().viewport;
  if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
    session.view.setState({ viewport: target });
    return;
  }
  const startMs = performance.now();
  let last = from;
  const step = (nowMs: number): void => {
    // a hand on the view wins over the motion
    if (session.view.getState().viewport !== last) return;
    const part = Math.min(1, Math.max(0, (nowMs - startMs) / moveMs));
    const eased = 1 - (1 - part) ** 3;
    last = part === 1 ? target : blend(from, target, eased);
    session.view.setState({ viewport: last });
    if (part < 1) requestAnimationFrame(step);
  };
  requestAnimationFrame(step);
}

function routeBox(plant: Plant): Box | null {
  const { pole, livingUnit } = plant.route();
  let box: Box | null = null;
  for (const { eastM, northM } of [...pole.values(), ...livingUnit.values()]) {
    box = box
      ? {
          westM: Math.min(box.westM, eastM),
          eastM: Math.max(box.eastM, eastM),
          southM: Math.min(box.southM, northM),
          northM: Math.max(box.northM, northM),
        }
      : { westM: eastM, eastM, southM: northM, northM };
  }
  return box;
}
