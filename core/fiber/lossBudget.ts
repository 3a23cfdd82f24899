import { requireFinite, requireNotNegative } from "../units/guard.ts";

/** A length of one fiber at one wavelength. */
export type FiberSegment = { readonly lengthM: number; readonly dbPerKm: number };

/** Losses of one kind at points: splices, connections, splitters. */
export type LossEvent = { readonly kind: string; readonly lossDb: number; readonly count: number };

/**
 * Loss of a light path.
 *
 * @param segments lengths, m, with their loss, dB/km; 0 or more
 * @param events   loss each, dB, and how many, whole; 0 or more
 * @param marginDb kept for repair and ageing, dB, 0 or more
 * @returns dB
 * @throws RangeError when a figure is out of its range or not finite
 * @source sum of km times dB/km, events and margin; checked in tests/standards/lossBudget.test.ts
 */
export function pathLossDb(segments: readonly FiberSegment[], events: readonly LossEvent[], marginDb: number): number {
  requireNotNegative("marginDb", marginDb);
  let lossDb = marginDb;
  for (const segment of segments) {
    requireNotNegative("lengthM", segment.lengthM);
    requireNotNegative("dbPerKm", segment.dbPerKm);
    lossDb += (segment.lengthM / 1000) * segment.dbPerKm;
  }
  for (const event of events) {
    requireNotNegative(`lossDb of ${event.kind}`, event.lossDb);
    if (!(Number.isInteger(event.count) && event.count >= 0)) {
      throw new RangeError(`count of ${event.kind} must be a whole number, 0 or more, not ${event.count}`);
    }
    lossDb += event.lossDb * event.count;
  }
  return requireFinite("lossDb", lossDb);
}

/**
 * How far a loss lies below the largest its optical class allows. Negative: too little light arrives.
 *
 * @returns dB
 * @throws RangeError when a figure is not finite
 */
export function marginToMaxDb(lossDb: number, classMaxDb: number): number {
  return requireFinite("classMaxDb", classMaxDb) - requireFinite("lossDb", lossDb);
}

/**
 * How far a loss lies above the least its optical class allows. Negative: so much light arrives that the receiver is overloaded.
 *
 * Give the loss of the path without a repair margin: on the first day that margin is not lost yet.
 *
 * @returns dB
 * @throws RangeError when a figure is not finite
 */
export function marginToMinDb(lossDb: number, classMinDb: number): number {
  return requireFinite("lossDb", lossDb) - requireFinite("classMinDb", classMinDb);
}
