import { pathLossDb } from "./lossBudget.ts";

/** A loss on both ways, dB. */
export type BothWays = { readonly upDb: number; readonly downDb: number };

/** A length of fiber and what it loses at the wavelength of each way. */
export type LightSegment = {
  readonly what: string;
  readonly lengthM: number;
  readonly upDbPerKm: number;
  readonly downDbPerKm: number;
};

/** Losses of one kind at points: the least and the most each of them may lose, dB. */
export type LightEvent = {
  readonly what: string;
  readonly count: number;
  readonly leastDb: number;
  readonly mostDb: number;
};

/** One line of a budget. */
type LightTerm = { readonly what: string; readonly least: BothWays; readonly most: BothWays };

export type LightBudget = {
  /** In the order given, segments first. */
  readonly terms: readonly LightTerm[];
  readonly least: BothWays;
  readonly most: BothWays;
  /** Fiber of all segments, m. */
  readonly lengthM: number;
};

/**
 * Loss of a light path both ways, the least and the most, line by line.
 *
 * @param segments lengths, m, with their loss both ways, dB/km; 0 or more
 * @param events   what is lost at points; leastDb not above mostDb
 * @throws RangeError when a figure is out of its range or not finite
 * @source sum of km times dB/km and of events; checked in tests/standards/lossBudget.test.ts
 */
export function lightBudget(segments: readonly LightSegment[], events: readonly LightEvent[]): LightBudget {
  const ofFiber = segments.map(({ what, lengthM, upDbPerKm, downDbPerKm }): LightTerm => {
    const lossDb = (dbPerKm: number) => pathLossDb([{ lengthM, dbPerKm }], [], 0);
    const both = { upDb: lossDb(upDbPerKm), downDb: lossDb(downDbPerKm) };
    return { what, least: both, most: both };
  });
  const ofEvents = events.map(({ what, count, leastDb, mostDb }): LightTerm => {
    if (leastDb > mostDb) throw new RangeError(`the least loss of ${what} must not be above its most`);
    const lossDb = (each: number) => pathLossDb([], [{ kind: what, lossDb: each, count }], 0);
    const both = (each: number) => ({ upDb: lossDb(each), downDb: lossDb(each) });
    return { what, least: both(leastDb), most: both(mostDb) };
  });
  const terms = [...ofFiber, ...ofEvents];
  return {
    terms,
    least: sumOf(terms.map((one) => one.least)),
    most: sumOf(terms.map((one) => one.most)),
    lengthM: segments.reduce((sum, one) => sum + one.lengthM, 0),
  };
}

/**
 * Power that arrives, from what is launched and what is lost on the way.
 *
 * @param launch      least and most the sender may launch, dBm
 * @param leastLossDb least loss of the way; with the strongest sender it gives the most that can arrive
 * @param mostLossDb  most loss of the way; with the weakest sender it gives the least
 * @returns dBm
 */
export function powerRange(launch: PowerRange, leastLossDb: number, mostLossDb: number): PowerRange {
  return { leastDbm: launch.leastDbm - mostLossDb, mostDbm: launch.mostDbm - leastLossDb };
}

export type PowerRange = { readonly leastDbm: number; readonly mostDbm: number };

/** The two units of one hub output whose losses differ most, by their place in the list. */
export type Differential = {
  readonly lossDb: number;
  readonly way: "up" | "down";
  readonly far: number;
  readonly near: number;
};

/**
 * Largest difference of loss between two units lit from one hub output, on the way where it is larger: the farther one at its most
 * against the nearer one at its least.
 *
 * @param budgets one for each unit
 * @returns null where there are fewer than two
 */
export function differential(budgets: readonly Pick<LightBudget, "least" | "most">[]): Differential | null {
  let widest: Differential | null = null;
  for (const [far, { most }] of budgets.entries())
    for (const [near, { least }] of budgets.entries()) {
      if (near === far) continue;
      const [upDb, downDb] = [most.upDb - least.upDb, most.downDb - least.downDb];
      const lossDb = Math.max(upDb, downDb);
      if (widest === null || lossDb > widest.lossDb)
        widest = { lossDb, way: upDb >= downDb ? "up" : "down", far, near };
    }
  return widest;
}

function sumOf(parts: readonly BothWays[]): BothWays {
  return parts.reduce((sum, one) => ({ upDb: sum.upDb + one.upDb, downDb: sum.downDb + one.downDb }), {
    upDb: 0,
    downDb: 0,
  });
}
