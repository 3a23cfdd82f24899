/** What a fiber may lose, and how it may reflect. */
export type TraceLimits = {
  /** Of a splice, and of a tap or splitter over what is drawn for it, dB. */
  readonly spliceMaxDb: number;
  readonly connectionMaxDb: number;
  /** Strongest reflection of a connection, dB. */
  readonly reflectanceMaxDb: number;
  readonly sectionMaxDbPerKm: number;
  readonly returnLossMinDb: number;
};

/** One place along a fiber, as one or both directions show it. */
export type SeenPlace = {
  readonly kind: "connection" | "splice" | "tap" | "splitter";
  /** Loss drawn for it, dB. */
  readonly drawnDb: number;
  /** From each end a trace was taken from; one or two. */
  readonly lossesDb: readonly number[];
};

/** A figure on the wrong side of its limit, both in its unit. */
export type OverLimit = {
  readonly measured: number;
  readonly limit: number;
};

/**
 * Loss of a place from both ends: one direction shows a splice between unlike fibers too large and the other too small, even as a gain.
 *
 * @param lossesDb one or two, dB
 * @returns dB
 * @throws RangeError where none is given
 * @source mean of the two directions, IEC 61280-4-2 and TIA-455-8 [memory]; checked in tests/standards/traceLoss.test.ts
 */
export function meanLossDb(lossesDb: readonly number[]): number {
  if (lossesDb.length === 0) throw new RangeError("a loss is the mean of one direction or more");
  return lossesDb.reduce((sum, one) => sum + one, 0) / lossesDb.length;
}

/** The loss of a place where it is over its limit: a tap or splitter may lose what is drawn for it and a splice more. */
export function lossOverLimit({ kind, drawnDb, lossesDb }: SeenPlace, limits: TraceLimits): OverLimit | null {
  const { spliceMaxDb, connectionMaxDb } = limits;
  const branchMaxDb = drawnDb + spliceMaxDb;
  const most = { connection: connectionMaxDb, splice: spliceMaxDb, tap: branchMaxDb, splitter: branchMaxDb };
  return overLimit(meanLossDb(lossesDb), most[kind]);
}

/** A reflection stronger than it may be; null where none was told. */
export function reflectanceOverLimit(
  reflectanceDb: number | null,
  { reflectanceMaxDb }: TraceLimits,
): OverLimit | null {
  return reflectanceDb === null ? null : overLimit(reflectanceDb, reflectanceMaxDb);
}

/**
 * A section of fiber that loses more than it may.
 *
 * @param dbPerKm   slope as the instrument fitted it
 * @param lengthM   of the section: on a short one a slope is mostly noise
 * @returns null within the limit, or where the section is too short to be judged
 */
export function sectionOverLimit(
  dbPerKm: number,
  lengthM: number,
  { sectionMaxDbPerKm }: TraceLimits,
): OverLimit | null {
  return lengthM < shortestSectionM ? null : overLimit(dbPerKm, sectionMaxDbPerKm);
}

/**
 * The whole way where it loses more than what is drawn on it and its fiber may lose together.
 *
 * @param totalDb  as the instrument sums it up; null where it did not
 * @param drawnDb  of all that is drawn between both ends, dB
 */
export function wholeOverLimit(
  totalDb: number | null,
  { drawnDb, lengthM }: { readonly drawnDb: number; readonly lengthM: number },
  { sectionMaxDbPerKm }: TraceLimits,
): OverLimit | null {
  const limit = drawnDb + (lengthM / 1000) * sectionMaxDbPerKm;
  return totalDb === null ? null : overLimit(totalDb, limit);
}

/** The return loss of the whole way; null within its limit, or where the instrument told none. */
export function returnLossUnderLimit(returnLossDb: number | null, { returnLossMinDb }: TraceLimits): OverLimit | null {
  if (returnLossDb === null || returnLossDb <= 0 || returnLossDb >= returnLossMinDb) return null;
  return { measured: returnLossDb, limit: returnLossMinDb };
}

/** Below this a slope is noise: common practice, no source. */
const shortestSectionM = 200;

/** Instruments write thousandths of a dB: what equals a limit is not over it. */
function overLimit(measured: number, limit: number): OverLimit | null {
  return measured > limit + 5e-10 ? { measured, limit } : null;
}
