import type { Point } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type Places, placesOf } from "../canvas/places.ts";
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
  const { plant } = openRouteOf(session);
  const box = routeBox(plant, placesNow(session));
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

/** Puts a point of the page in the middle of the view, at least at so many pixels to the metre. */
export function showPlace(session: Session, at: Point, closerPxPerM = 0): void {
  moveTo(session, centreOn(session.view.getState().viewport, at.eastM, at.northM, closerPxPerM));
}

/** Shows the chosen rows whole. */
export function fitChosen(session: Session): void {
  const { selection, viewport } = session.view.getState();
  const { plant } = openRouteOf(session);
  const places = selection.flatMap((ref) => spreadOf(plant, ref, placesNow(session)));
  const box = boxAbout(places);
  if (box) moveTo(session, fitTo(viewport, box, fitMarginPx * 2));
}

/** Shows the middle of the view at scale 100 %. */
export function fullScale(session: Session): void {
  zoomBy(session, fullScalePxPerM / session.view.getState().viewport.pxPerM);
}

/** Chooses rows and shows them. */
export function chooseAndShow(session: Session, refs: readonly RefKey[], closerPxPerM = 0): void {
  session.view.setState({ selection: refs });
  bringIntoView(session, refs, closerPxPerM);
}

/** Goes to where a finding is and chooses what it is about; one about a trace is shown on the trace too. */
export function goToFinding(session: Session, finding: WindowFinding): void {
  const { plant } = openRouteOf(session);
  const [first] = finding.subjects.flatMap((one) => drawnRef(plant, refKey(one.table, one.id)) ?? []);
  const trace = finding.subjects.find((one) => one.table === "trace");
  session.view.setState(({ traces }) => ({
    selection: first ? [first] : [],
    sheets: null,
    traces: trace ? { ...traces, isOpen: true, traceId: trace.id } : traces,
  }));
  const at = placeOfFinding(plant, placesNow(session), finding);
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
  const places = refs.flatMap((ref) => placeOfRef(plant, ref, placesNow(session)) ?? []);
  const [first] = places;
  const { viewport } = session.view.getState();
  if (!first || viewport.widthPx === 0) return;
  const isClose = viewport.pxPerM >= closerPxPerM;
  if (isClose && places.some((one) => isShown(viewport, one.eastM, one.northM, edgePx))) return;
  moveTo(session, centreOn(viewport, first.eastM, first.northM, closerPxPerM));
}

/** Where things stand as the page is drawn now. */
export function placesNow(session: Session): Places {
  return placesOf(openRouteOf(session).plant, session.view.getState().drawnAs);
}

/** Where a finding's mark stands on the page; null for a finding about the whole route. */
export function placeOfFinding(plant: Plant, places: Places, finding: WindowFinding): Point | null {
  if (!places.straight && finding.at) return finding.at;
  for (const { table, id } of finding.subjects) {
    const ref = drawnRef(plant, refKey(table, id));
    const at = ref && placeOfRef(plant, ref, places);
    if (at) return at;
  }
  return finding.at ? places.pointAt(finding.at) : null;
}

/** Where a row stands on the page; null for what has no place or is gone. */
export function placeOfRef(plant: Plant, ref: RefKey, places = placesOf(plant, "ground")): Point | null {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return null;
  switch (table) {
    case "pole":
      return places.poleAt(id);
    case "livingUnit":
      return places.unitAt(plant.rowOf("livingUnit", id));
    case "span":
      return alongSpan(plant, places, id, plant.rowOf("span", id).lengthM / 2);
    case "guy":
      return places.poleAt(plant.rowOf("guy", id).poleId);
    case "terminal":
    case "crossing":
    case "structure":
    case "groundPoint":
    case "slack":
    case "closure": {
      const row = plant.rowOf(table, id);
      return alongSpan(plant, places, row.spanId, row.offsetM);
    }
    case "attachment":
      return places.poleAt(plant.rowOf("attachment", id).poleId);
    case "drop": {
      const { spanId, offsetM } = plant.rowOf("terminal", plant.rowOf("drop", id).terminalId);
      return alongSpan(plant, places, spanId, offsetM);
    }
    default:
      return null;
  }
}

function alongSpan(plant: Plant, places: Places, spanId: string, offsetM: number): Point {
  const { from, to } = places.spanEnds(spanId);
  const part = offsetM / plant.rowOf("span", spanId).lengthM;
  return { eastM: from.eastM + (to.eastM - from.eastM) * part, northM: from.northM + (to.northM - from.northM) * part };
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

function routeBox(plant: Plant, places: Places): Box | null {
  const { pole, livingUnit } = plant.route();
  const points = [
    ...[...pole.keys()].map((id) => places.poleAt(id)),
    ...[...livingUnit.values()].map((unit) => places.unitAt(unit)),
    ...(places.straight?.leaders.map((one) => one.to) ?? []),
  ];
  return boxAbout(points);
}

/** The ends of a span, the place of anything else. */
function spreadOf(plant: Plant, ref: RefKey, places: Places): readonly Point[] {
  const { table, id } = splitRef(ref);
  if (table !== "span" || !plant.row(table, id)) return [placeOfRef(plant, ref, places)].filter((one) => one !== null);
  const { from, to } = places.spanEnds(id);
  return [from, to];
}

function boxAbout(points: readonly Point[]): Box | null {
  let box: Box | null = null;
  for (const { eastM, northM } of points) {
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
