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
  /** Strongest told; null where no instrument told one. */
  readonly reflectanceDb: number | null;
};

/** A figure that is over its limit: of which quantity, and both in its unit. */
export type OverLimit = {
  readonly what: "loss" | "reflectance" | "section" | "whole" | "returnLoss";
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

/**
 * What is over its limit at a place of a fiber.
 *
 * A tap or splitter may lose what is drawn for it and a splice more.
 */
export function placeOverLimits(
  { kind, drawnDb, lossesDb, reflectanceDb }: SeenPlace,
  limits: TraceLimits,
): OverLimit[] {
  const { spliceMaxDb, connectionMaxDb, reflectanceMaxDb } = limits;
  const measured = meanLossDb(lossesDb);
  const most = {
    connection: connectionMaxDb,
    splice: spliceMaxDb,
    tap: drawnDb + spliceMaxDb,
    splitter: drawnDb + spliceMaxDb,
  };
  const over: OverLimit[] = [];
  if (isOver(measured, most[kind])) over.push({ what: "loss", measured, limit: most[kind] });
  if (reflectanceDb !== null && isOver(reflectanceDb, reflectanceMaxDb))
    over.push({ what: "reflectance", measured: reflectanceDb, limit: reflectanceMaxDb });
  return over;
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
  if (lengthM < shortestSectionM || !isOver(dbPerKm, sectionMaxDbPerKm)) return null;
  return { what: "section", measured: dbPerKm, limit: sectionMaxDbPerKm };
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
  return totalDb !== null && isOver(totalDb, limit) ? { what: "whole", measured: totalDb, limit } : null;
}

/** The return loss of the whole way; null within its limit, or where the instrument told none. */
export function returnLossUnderLimit(returnLossDb: number | null, { returnLossMinDb }: TraceLimits): OverLimit | null {
  if (returnLossDb === null || returnLossDb <= 0 || returnLossDb >= returnLossMinDb) return null;
  return { what: "returnLoss", measured: returnLossDb, limit: returnLossMinDb };
}

/** Below this a slope is noise: common practice, no source. */
const shortestSectionM = 200;

/** Instruments write thousandths of a dB: what equals a limit is not over it. */
function isOver(figure: number, limit: number): boolean {
  return figure > limit + 5e-10;
}
