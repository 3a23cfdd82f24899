import { type RefKey, refKey, refsOf, splitRef } from "../app/ref.ts";
import { bandReachPx, bandWidthPx } from "./drawCrossings.ts";
import { findingPoint } from "./drawFindings.ts";
import { terminalOf } from "./drawHung.ts";
import { type FindingMark, findingMarks } from "./findingMarks.ts";
import { coilPlacePx, distanceToPlacePx, terminalPlacePx } from "./hungPlace.ts";
import { housePx, ringPx } from "./level.ts";
import type { Picture } from "./paint.ts";
import { siteHits, sitePoint, siteWithin } from "./siteHits.ts";
import { at } from "./spanMarks.ts";
import { type Box, groundAt, screenX, screenY } from "./viewport.ts";

/** How far from a thing a click still means it, px. */
const tolerancePx = 6;

/** Farthest any symbol is drawn from its place on the ground, px. */
const reachPx = 90;

type Candidate = { readonly ref: RefKey; readonly distancePx: number };

/** Rows under a pixel, the one meant first: small things before large, nearer before farther. */
export function hitAll(picture: Picture, xPx: number, yPx: number): readonly RefKey[] {
  const around = groundAround(picture, xPx, yPx);
  return [
    ...near(hungHits(picture, around, xPx, yPx)),
    ...near(poleHits(picture, around, xPx, yPx)),
    ...near(houseHits(picture, around, xPx, yPx)),
    ...near(siteHits(picture, around, xPx, yPx)),
    ...near(crossingHits(picture, around, xPx, yPx)),
    ...near(spanHits(picture, around, xPx, yPx)),
  ];
}

/** The finding's mark under a pixel, or null. */
export function hitFinding({ findings, view }: Picture, xPx: number, yPx: number): FindingMark | null {
  const found = findingMarks(findings, view.pxPerM).find((mark) => {
    const [x, y] = findingPoint(mark, view);
    return Math.hypot(x - xPx, y - yPx) <= 11;
  });
  return found ?? null;
}

/** Rows whose place lies in a box of the screen: what a marquee takes. */
export function refsWithin(picture: Picture, box: Box): readonly RefKey[] {
  const { poles, terminals, houses, coils, closures } = picture.scene;
  return [
    ...poles.index.within(box).flatMap((i) => refsOf("pole", poles.ids[i])),
    ...terminals.index.within(box).flatMap((i) => refsOf("terminal", terminals.marks[i]?.id)),
    ...houses.index
      .within(box)
      .flatMap((i) => (houses.marks[i]?.unitIds ?? []).flatMap((id) => refsOf("livingUnit", id))),
    ...coils.index.within(box).flatMap((i) => refsOf("slack", coils.marks[i]?.id)),
    ...closures.index.within(box).flatMap((i) => refsOf("closure", closures.marks[i]?.id)),
    ...siteWithin(picture, box),
  ];
}

/** Middle of a row's symbol on screen, or null for a row that is not drawn by itself. */
export function screenPoint(picture: Picture, ref: RefKey): readonly [number, number] | null {
  const { scene, view } = picture;
  const { table, id } = splitRef(ref);
  const placed = (mark: { eastM: number; northM: number } | undefined) =>
    mark ? ([screenX(view, mark.eastM), screenY(view, mark.northM)] as const) : null;
  switch (table) {
    case "pole": {
      const i = scene.poles.ids.indexOf(id);
      return i < 0 ? null : placed({ eastM: at(scene.poles.eastM, i), northM: at(scene.poles.northM, i) });
    }
    case "terminal": {
      const mark = scene.terminals.marks[scene.terminals.positionOf.get(id) ?? -1];
      if (!mark) return null;
      const place = terminalPlacePx(mark, view);
      return [place.x, place.y];
    }
    case "slack": {
      const mark = scene.coils.marks[scene.coils.positionOf.get(id) ?? -1];
      if (!mark) return null;
      const place = coilPlacePx(mark, view, terminalOf(mark, scene.terminals));
      return [place.x, place.y];
    }
    case "closure":
      return placed(scene.closures.marks[scene.closures.positionOf.get(id) ?? -1]);
    case "livingUnit":
      return placed(scene.houses.marks[scene.houses.positionOf.get(id) ?? -1]);
    case "guy":
    case "structure":
    case "groundPoint":
      return sitePoint(picture, table, id);
    case "crossing":
      return placed(scene.crossings.marks.find((one) => one.id === id));
    case "span": {
      const i = scene.spans.positionOf.get(id);
      if (i === undefined) return null;
      const { spans } = scene;
      return placed({
        eastM: (at(spans.fromEastM, i) + at(spans.toEastM, i)) / 2,
        northM: (at(spans.fromNorthM, i) + at(spans.toNorthM, i)) / 2,
      });
    }
    default:
      return null;
  }
}

function near(candidates: readonly Candidate[]): RefKey[] {
  return candidates
    .filter((one) => one.distancePx <= tolerancePx)
    .sort((a, b) => a.distancePx - b.distancePx)
    .map((one) => one.ref);
}

function groundAround({ view }: Picture, xPx: number, yPx: number): Box {
  const { eastM, northM } = groundAt(view, xPx, yPx);
  const reachM = reachPx / view.pxPerM;
  return { westM: eastM - reachM, eastM: eastM + reachM, southM: northM - reachM, northM: northM + reachM };
}

function hungHits({ scene, view, level }: Picture, around: Box, x: number, y: number): Candidate[] {
  const { terminals, coils, closures } = scene;
  const terminalHits = terminals.index.within(around).flatMap((i): Candidate[] => {
    const mark = terminals.marks[i];
    if (!mark) return [];
    return [{ ref: refKey("terminal", mark.id), distancePx: distanceToPlacePx(terminalPlacePx(mark, view), x, y) }];
  });
  if (level === "marks") return terminalHits;
  const coilHits = coils.index.within(around).flatMap((i): Candidate[] => {
    const mark = coils.marks[i];
    if (!mark) return [];
    const place = coilPlacePx(mark, view, terminalOf(mark, terminals));
    return [{ ref: refKey("slack", mark.id), distancePx: distanceToPlacePx(place, x, y) }];
  });
  const closureHits = closures.index.within(around).flatMap((i): Candidate[] => {
    const mark = closures.marks[i];
    if (!mark) return [];
    const away = Math.hypot(screenX(view, mark.eastM) - x, screenY(view, mark.northM) - y);
    return [{ ref: refKey("closure", mark.id), distancePx: Math.max(0, away - 9) }];
  });
  return [...terminalHits, ...coilHits, ...closureHits];
}

function poleHits({ scene: { poles }, view }: Picture, around: Box, x: number, y: number): Candidate[] {
  return poles.index.within(around).flatMap((i): Candidate[] => {
    const away = Math.hypot(screenX(view, at(poles.eastM, i)) - x, screenY(view, at(poles.northM, i)) - y);
    return refsOf("pole", poles.ids[i]).map((ref) => ({ ref, distancePx: Math.max(0, away - ringPx(view)) }));
  });
}

function houseHits({ scene: { houses }, view }: Picture, around: Box, x: number, y: number): Candidate[] {
  return houses.index.within(around).flatMap((i): Candidate[] => {
    const mark = houses.marks[i];
    const first = mark?.unitIds[0];
    if (!mark || first === undefined) return [];
    const dx = Math.abs(screenX(view, mark.eastM) - x);
    const dy = Math.abs(screenY(view, mark.northM) - y);
    return [{ ref: refKey("livingUnit", first), distancePx: Math.max(0, Math.max(dx, dy) - housePx(view) / 2) }];
  });
}

function crossingHits({ scene: { crossings }, view, level }: Picture, around: Box, x: number, y: number): Candidate[] {
  return crossings.index.within(around).flatMap((i): Candidate[] => {
    const mark = crossings.marks[i];
    if (!mark) return [];
    const dx = x - screenX(view, mark.eastM);
    const dy = y - screenY(view, mark.northM);
    const along = Math.abs(dx * mark.frame.alongX + dy * mark.frame.alongY) - bandWidthPx(mark, view) / 2;
    const across = Math.abs(dx * mark.frame.belowX + dy * mark.frame.belowY);
    // on the strand itself the span is meant
    if (across > bandReachPx(level) || across < 7) return [];
    return [{ ref: refKey("crossing", mark.id), distancePx: Math.max(0, along) }];
  });
}

function spanHits({ scene: { spans }, view }: Picture, around: Box, x: number, y: number): Candidate[] {
  return spans.index.within(around).flatMap((i): Candidate[] => {
    const ax = screenX(view, at(spans.fromEastM, i));
    const ay = screenY(view, at(spans.fromNorthM, i));
    const dx = screenX(view, at(spans.toEastM, i)) - ax;
    const dy = screenY(view, at(spans.toNorthM, i)) - ay;
    const part = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / Math.max(1e-9, dx * dx + dy * dy)));
    const away = Math.hypot(x - ax - dx * part, y - ay - dy * part);
    return refsOf("span", spans.ids[i]).map((ref) => ({ ref, distancePx: away }));
  });
}
