import { farPoleId, type Point, planeDistanceM, spansAtPole } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { snapReachPx } from "./strandSnap.ts";
import { toolWords } from "./words.ts";

/** A place a dragged pole is drawn to, what it is, and the line one sees it by. */
export type PoleSnap = Point & { readonly words: string; readonly guide: readonly [Point, Point] };

/**
 * The place a pole is drawn to: the straight line of its neighbours, where its two spans are equally long, or both at once; null
 * where none is near. A pole at the end of a line is drawn to the line of the two before it.
 *
 * @param at      where the hand has it, m
 * @param pxPerM  scale of the ground as drawn
 */
export function nearestPoleSnap(plant: Plant, poleId: string, at: Point, pxPerM: number): PoleSnap | null {
  const reachM = snapReachPx / pxPerM;
  const near = poleSnaps(plant, poleId, at).filter((one) => planeDistanceM(one, at) <= reachM);
  return near[0] ?? null;
}

/** Where both hold comes first, then the nearer. */
function poleSnaps(plant: Plant, poleId: string, at: Point): readonly PoleSnap[] {
  const [a, b, ...others] = nextPoles(plant, poleId);
  if (a === undefined || others.length > 0) return [];
  if (b === undefined) return straightOn(plant, poleId, a, at);
  const [from, to] = [plant.rowOf("pole", a), plant.rowOf("pole", b)];
  const chordM = planeDistanceM(from, to);
  if (chordM === 0) return [];
  const middle = { eastM: (from.eastM + to.eastM) / 2, northM: (from.northM + to.northM) / 2 };
  const [east, north] = [(to.eastM - from.eastM) / chordM, (to.northM - from.northM) / chordM];
  const across = { eastM: middle.eastM - north, northM: middle.northM + east };
  const guide = [from, to] as const;
  const inLine = { ...footOn(from, to, at), words: toolWords.inLineSnap(from.tag, to.tag), guide };
  const even = footOn(middle, across, at);
  const square = { ...even, words: toolWords.evenSpansSnap(from.tag, to.tag), guide: [middle, even] as const };
  const both = { ...middle, words: toolWords.midwaySnap(from.tag, to.tag), guide };
  return [both, ...[inLine, square].sort((one, other) => planeDistanceM(one, at) - planeDistanceM(other, at))];
}

function straightOn(plant: Plant, poleId: string, lastId: string, at: Point): readonly PoleSnap[] {
  const [beforeId, ...others] = nextPoles(plant, lastId).filter((id) => id !== poleId);
  if (beforeId === undefined || others.length > 0) return [];
  const [before, last] = [plant.rowOf("pole", beforeId), plant.rowOf("pole", lastId)];
  if (planeDistanceM(before, last) === 0) return [];
  return [{ ...footOn(before, last, at), words: toolWords.inLineSnap(before.tag, last.tag), guide: [before, last] }];
}

function nextPoles(plant: Plant, poleId: string): readonly string[] {
  return spansAtPole(plant, poleId).map((spanId) => farPoleId(plant, spanId, poleId));
}

/** The point of a line through two points that is nearest to a third. */
function footOn(from: Point, to: Point, at: Point): Point {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM];
  const part = ((at.eastM - from.eastM) * east + (at.northM - from.northM) * north) / (east * east + north * north);
  return { eastM: from.eastM + part * east, northM: from.northM + part * north };
}
