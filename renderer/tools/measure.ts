import { type Point, planeDistanceM, pointOnSpan, spansAtPole } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { splitRef } from "../app/ref.ts";
import { openRouteOf, type Session, tell } from "../app/session.ts";
import { hitAll } from "../canvas/hitTest.ts";
import type { Picture } from "../canvas/paint.ts";
import { at } from "../canvas/spanMarks.ts";
import { groundAt } from "../canvas/viewport.ts";
import { titleOf } from "../panels/words.ts";
import { nearestSpan } from "./terminalHand.ts";
import { toolWords } from "./words.ts";

/** A place on the strand: distance from the span's first pole, m. */
type StrandPlace = { readonly spanId: string; readonly offsetM: number };

/** A point somebody clicked; on the strand where it was caught there. */
export type MeasurePoint = Point & { readonly words: string; readonly on: StrandPlace | null };

/** One leg of a measurement. Lengths m, bearing rad clockwise from the grid's north; along the strand null where none leads there. */
type Leg = { readonly straightM: number; readonly alongM: number | null; readonly bearingRad: number };

/** Adds the point under a pixel to the measurement. */
export function addMeasured(session: Session, picture: Picture, xPx: number, yPx: number): void {
  const { measure } = session.view.getState();
  const point = measure && measuredAt(session, picture, xPx, yPx);
  if (point) session.view.setState({ measure: [...measure, point] });
  else if (measure) tell(session, toolWords.notGround);
}

/** Legs between neighbouring points. */
export function legsOf(plant: Plant, points: readonly MeasurePoint[]): readonly Leg[] {
  return points.slice(1).flatMap((to, i) => {
    const from = points[i];
    if (!from) return [];
    const east = to.eastM - from.eastM;
    const north = to.northM - from.northM;
    const turnRad = Math.atan2(east, north);
    return [
      {
        straightM: planeDistanceM(from, to),
        alongM: from.on && to.on ? alongStrandM(plant, from.on, to.on) : null,
        bearingRad: turnRad < 0 ? turnRad + 2 * Math.PI : turnRad,
      },
    ];
  });
}

/** Shortest way along the strand between two places of it, m; null where no spans lead there. */
export function alongStrandM(plant: Plant, from: StrandPlace, to: StrandPlace): number | null {
  const start = plant.rowOf("span", from.spanId);
  const end = plant.rowOf("span", to.spanId);
  const reachedM = new Map<string, number>();
  const waiting = new Map([
    [start.fromPoleId, from.offsetM],
    [start.toPoleId, start.lengthM - from.offsetM],
  ]);
  let bestM = from.spanId === to.spanId ? Math.abs(from.offsetM - to.offsetM) : Number.POSITIVE_INFINITY;
  for (let next = nearest(waiting); next; next = nearest(waiting)) {
    const [poleId, distanceM] = next;
    waiting.delete(poleId);
    if (distanceM >= bestM) break;
    reachedM.set(poleId, distanceM);
    if (poleId === end.fromPoleId) bestM = Math.min(bestM, distanceM + to.offsetM);
    if (poleId === end.toPoleId) bestM = Math.min(bestM, distanceM + end.lengthM - to.offsetM);
    for (const spanId of spansAtPole(plant, poleId)) {
      const span = plant.rowOf("span", spanId);
      const farId = span.fromPoleId === poleId ? span.toPoleId : span.fromPoleId;
      const throughM = distanceM + span.lengthM;
      if (!reachedM.has(farId) && throughM < (waiting.get(farId) ?? Number.POSITIVE_INFINITY))
        waiting.set(farId, throughM);
    }
  }
  return Number.isFinite(bestM) ? bestM : null;
}

function nearest(waiting: ReadonlyMap<string, number>): readonly [string, number] | null {
  let best: readonly [string, number] | null = null;
  for (const one of waiting) if (!best || one[1] < best[1]) best = one;
  return best;
}

/** Null on empty paper of a straightened page, which is no place on the ground. */
function measuredAt(session: Session, picture: Picture, xPx: number, yPx: number): MeasurePoint | null {
  const { plant } = openRouteOf(session);
  const hits = hitAll(picture, xPx, yPx);
  const caught = hits.find((ref) => ["pole", "terminal"].includes(splitRef(ref).table));
  if (caught) {
    const { table, id } = splitRef(caught);
    return table === "pole" ? poleMeasured(plant, id) : terminalMeasured(plant, id);
  }
  const near = nearestSpan(picture, xPx, yPx);
  const { spans } = picture.scene;
  const spanId = near && near.distancePx <= 8 ? spans.ids[near.position] : undefined;
  if (near && spanId !== undefined) {
    const offsetM = near.partFrac * at(spans.lengthM, near.position);
    const { eastM, northM } = pointOnSpan(plant, spanId, offsetM);
    return { eastM, northM, words: titleOf(plant, `span/${spanId}`), on: { spanId, offsetM } };
  }
  if (picture.scene.places.straight !== null) return null;
  return { ...groundAt(picture.view, xPx, yPx), words: toolWords.ground, on: null };
}

function poleMeasured(plant: Plant, poleId: string): MeasurePoint {
  const { eastM, northM, tag } = plant.rowOf("pole", poleId);
  const [spanId] = spansAtPole(plant, poleId);
  const span = spanId === undefined ? null : plant.rowOf("span", spanId);
  const on = span && { spanId: span.id, offsetM: span.fromPoleId === poleId ? 0 : span.lengthM };
  return { eastM, northM, words: tag, on };
}

function terminalMeasured(plant: Plant, terminalId: string): MeasurePoint {
  const { spanId, offsetM, name } = plant.rowOf("terminal", terminalId);
  const { eastM, northM } = pointOnSpan(plant, spanId, offsetM);
  return { eastM, northM, words: name, on: { spanId, offsetM } };
}
