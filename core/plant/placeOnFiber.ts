import { cablePath } from "./cablePath.ts";
import { type FiberPiece, fiberPieces, fiberToM } from "./fiberAlong.ts";
import type { FiberWay } from "./fiberWay.ts";
import type { Plant } from "./plant.ts";

/** Where on the strand a point of a fiber is. */
export type FiberPlace = {
  readonly cableId: string;
  readonly spanId: string;
  /** From the span's first pole, m. */
  readonly offsetM: number;
  /** The pole the light passed last before it, and how far along the strand it is behind that pole, m. */
  readonly pastPoleId: string;
  readonly pastPoleM: number;
  readonly towardsPoleId: string;
  /** The coil it waits in; null along the strand. */
  readonly slackId: string | null;
};

/**
 * The place on the strand of a point of a fiber.
 *
 * @param fiberM  from the end the way counts from, m; what lies beyond an end is told as that end
 */
export function placeOnFiber(plant: Plant, way: FiberWay, fiberM: number): FiberPlace | null {
  const isFar = way.fromEnd === "far";
  const atM = Math.min(way.lengthM, Math.max(0, isFar ? way.lengthM - fiberM : fiberM));
  const leg = way.legs.findLast((one) => one.startM <= atM) ?? way.legs[0];
  if (!leg) return null;
  const insideM = Math.min(leg.lengthM, atM - leg.startM);
  const piece = pieceAt(fiberPieces(plant, leg.cableId), insideM);
  if (!piece) return null;
  const { spanId, startM, endM, startOffsetM, endOffsetM, slackId } = piece;
  const share = Math.min(1, Math.max(0, (insideM - startM) / (endM - startM)));
  const offsetM = startOffsetM + share * (endOffsetM - startOffsetM);
  const { fromPoleId, toPoleId, lengthM } = plant.rowOf("span", spanId);
  const isReversed = cablePath(plant, leg.cableId).stepBySpan.get(spanId)?.reversed ?? false;
  const isForth = isReversed === isFar;
  return {
    cableId: leg.cableId,
    spanId,
    offsetM,
    pastPoleId: isForth ? fromPoleId : toPoleId,
    pastPoleM: isForth ? offsetM : lengthM - offsetM,
    towardsPoleId: isForth ? toPoleId : fromPoleId,
    slackId,
  };
}

/**
 * How far along a fiber a point of the strand is, from the end the way counts from, m; null where the fiber does not pass there.
 *
 * @param offsetM  from the span's first pole, m
 */
export function fiberAtPlace(plant: Plant, way: FiberWay, spanId: string, offsetM: number): number | null {
  for (const { cableId, startM, lengthM } of way.legs) {
    const insideM = fiberToM(plant, cableId, spanId, offsetM);
    if (insideM === null || insideM > lengthM + noiseM) continue;
    return way.fromEnd === "far" ? way.lengthM - startM - insideM : startM + insideM;
  }
  return null;
}

/** Noise of sums. */
const noiseM = 1e-6;

/** The last piece that begins at or before a point; the first before all. */
function pieceAt(pieces: readonly FiberPiece[], atM: number): FiberPiece | undefined {
  let [low, high] = [0, pieces.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((pieces[middle]?.startM ?? 0) <= atM) low = middle;
    else high = middle - 1;
  }
  return pieces[low];
}
