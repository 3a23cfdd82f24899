import { stationM } from "../../core/plant/cablePath.ts";
import type { Plant } from "../../core/plant/plant.ts";
import type { Picture } from "../canvas/paint.ts";
import { at } from "../canvas/spanMarks.ts";
import { groundAt, screenX, screenY } from "../canvas/viewport.ts";
import type { TerminalHand } from "./hand.ts";
import { nearestSnap, strandSnaps } from "./strandSnap.ts";
import { toolWords } from "./words.ts";

/** Farther than this from every strand a dragged terminal stays in the span it was in, px. */
const strandReachPx = 90;

/** A point along a span as drawn, and how far a pixel is from it. */
type OnSpan = { readonly position: number; readonly partFrac: number; readonly distancePx: number };

/**
 * The terminal under the hand at a pixel: on the nearest strand, snapped unless that is suspended.
 *
 * @param formerSpanId  span it is in until the hand comes near another strand
 */
export function terminalHandAt(
  picture: Picture,
  plant: Plant,
  terminalId: string,
  formerSpanId: string,
  [xPx, yPx]: readonly [number, number],
  isSnapping: boolean,
): TerminalHand {
  const { spans } = picture.scene;
  const former = projected(picture, spans.positionOf.get(formerSpanId) ?? 0, xPx, yPx);
  const near = nearestSpan(picture, xPx, yPx);
  const on = near && near.distancePx <= strandReachPx ? near : former;
  const spanId = spans.ids[on.position] ?? formerSpanId;
  const lengthM = at(spans.lengthM, on.position);
  const terminal = plant.rowOf("terminal", terminalId);
  const halfM = Math.min(plant.rowOf("terminalModel", terminal.terminalModelId).lengthM / 2, lengthM / 2);
  const freeM = Math.min(lengthM - halfM, Math.max(halfM, on.partFrac * lengthM));
  const snap = isSnapping
    ? nearestSnap(strandSnaps(plant, terminalId, spanId), freeM, drawnPxPerM(picture, on.position))
    : null;
  const offsetM = snap?.offsetM ?? freeM;
  const isOnCable = stationM(plant, terminal.cableId, spanId, offsetM) !== null;
  const refusal = isOnCable ? null : toolWords.notOnCable(plant.rowOf("cable", terminal.cableId).name);
  return { kind: "terminal", terminalId, spanId, offsetM, snap, refusal };
}

/** The nearest span to a pixel, or null where none is near. */
export function nearestSpan(picture: Picture, xPx: number, yPx: number): OnSpan | null {
  const { view, scene } = picture;
  const { eastM, northM } = groundAt(view, xPx, yPx);
  const reachM = strandReachPx / view.pxPerM;
  const box = { westM: eastM - reachM, eastM: eastM + reachM, southM: northM - reachM, northM: northM + reachM };
  let best: OnSpan | null = null;
  for (const position of scene.spans.index.within(box)) {
    const on = projected(picture, position, xPx, yPx);
    if (!best || on.distancePx < best.distancePx) best = on;
  }
  return best;
}

function projected({ scene: { spans }, view }: Picture, position: number, xPx: number, yPx: number): OnSpan {
  const fromX = screenX(view, at(spans.fromEastM, position));
  const fromY = screenY(view, at(spans.fromNorthM, position));
  const dx = screenX(view, at(spans.toEastM, position)) - fromX;
  const dy = screenY(view, at(spans.toNorthM, position)) - fromY;
  const along = ((xPx - fromX) * dx + (yPx - fromY) * dy) / Math.max(1e-9, dx * dx + dy * dy);
  const partFrac = Math.min(1, Math.max(0, along));
  return { position, partFrac, distancePx: Math.hypot(xPx - fromX - dx * partFrac, yPx - fromY - dy * partFrac) };
}

function drawnPxPerM({ scene: { spans }, view }: Picture, position: number): number {
  const drawnM = Math.hypot(
    at(spans.toEastM, position) - at(spans.fromEastM, position),
    at(spans.toNorthM, position) - at(spans.fromNorthM, position),
  );
  return (view.pxPerM * drawnM) / at(spans.lengthM, position);
}
