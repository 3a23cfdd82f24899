import { type RefKey, refKey, refsOf } from "../app/ref.ts";
import { distanceToPlacePx } from "./hungPlace.ts";
import type { Picture } from "./paint.ts";
import { groundArmPx, groundPointPx, guyLinePx, structurePlacePx } from "./sitePlace.ts";
import type { Box } from "./viewport.ts";

type Candidate = { readonly ref: RefKey; readonly distancePx: number };

/** Guys, structures and ground points near a pixel; what is not drawn at this level is not met. */
export function siteHits({ scene, view, level }: Picture, around: Box, x: number, y: number): Candidate[] {
  if (level === "marks") return [];
  const { guys, structures, groundPoints } = scene;
  const guyHits = guys.index.within(around).flatMap((i): Candidate[] => {
    const mark = guys.marks[i];
    if (!mark) return [];
    const { from, anchor } = guyLinePx(mark, view);
    return [{ ref: refKey("guy", mark.id), distancePx: distanceToLinePx(from, anchor, x, y) }];
  });
  const structureHits = structures.index.within(around).flatMap((i): Candidate[] => {
    const mark = structures.marks[i];
    if (!mark) return [];
    const place = structurePlacePx(mark, view, level);
    // on the strand itself the span is meant
    if (mark.besideM === 0 && awayFromLinePx(mark.frame, place.x, place.y, x, y) < 7) return [];
    return [{ ref: refKey("structure", mark.id), distancePx: distanceToPlacePx(place, x, y) }];
  });
  if (level !== "labels") return [...guyHits, ...structureHits];
  const groundHits = groundPoints.index.within(around).flatMap((i): Candidate[] => {
    const mark = groundPoints.marks[i];
    if (!mark) return [];
    const [px, py] = groundPointPx(mark, view);
    return [{ ref: refKey("groundPoint", mark.id), distancePx: Math.max(0, Math.hypot(px - x, py - y) - groundArmPx) }];
  });
  return [...groundHits, ...guyHits, ...structureHits];
}

/** Guys, structures and ground points whose place lies in a box: a guy by its anchor. */
export function siteWithin({ scene, level }: Picture, box: Box): readonly RefKey[] {
  if (level === "marks") return [];
  const { guys, structures, groundPoints } = scene;
  const isIn = (eastM: number, northM: number) =>
    eastM >= box.westM && eastM <= box.eastM && northM >= box.southM && northM <= box.northM;
  return [
    ...guys.index.within(box).flatMap((i) => {
      const mark = guys.marks[i];
      return mark && isIn(mark.anchorEastM, mark.anchorNorthM) ? [refKey("guy", mark.id)] : [];
    }),
    ...structures.index.within(box).flatMap((i) => refsOf("structure", structures.marks[i]?.id)),
    ...(level === "labels"
      ? groundPoints.index.within(box).flatMap((i) => refsOf("groundPoint", groundPoints.marks[i]?.id))
      : []),
  ];
}

/** Where a guy, a structure or a ground point is pointed at, px; null where there is no such row. */
export function sitePoint(
  { scene, view, level }: Picture,
  table: "guy" | "structure" | "groundPoint",
  id: string,
): readonly [number, number] | null {
  if (table === "guy") {
    const mark = scene.guys.marks[scene.guys.positionOf.get(id) ?? -1];
    return mark ? guyLinePx(mark, view).anchor : null;
  }
  if (table === "structure") {
    const mark = scene.structures.marks[scene.structures.positionOf.get(id) ?? -1];
    if (!mark) return null;
    const place = structurePlacePx(mark, view, level);
    // of one that the line passes over the edge: in its middle the strand is met
    const edge = mark.besideM === 0 ? place.heightPx / 2 - 2 : 0;
    return [place.x + mark.frame.belowX * edge, place.y + mark.frame.belowY * edge];
  }
  const mark = scene.groundPoints.marks[scene.groundPoints.positionOf.get(id) ?? -1];
  return mark ? groundPointPx(mark, view) : null;
}

function awayFromLinePx(
  { belowX, belowY }: { readonly belowX: number; readonly belowY: number },
  lineX: number,
  lineY: number,
  x: number,
  y: number,
): number {
  return Math.abs((x - lineX) * belowX + (y - lineY) * belowY);
}

function distanceToLinePx(
  from: readonly [number, number],
  to: readonly [number, number],
  x: number,
  y: number,
): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const lengthSq = Math.max(1e-9, dx * dx + dy * dy);
  const part = Math.min(1, Math.max(0, ((x - from[0]) * dx + (y - from[1]) * dy) / lengthSq));
  return Math.hypot(x - from[0] - dx * part, y - from[1] - dy * part);
}
