import { requireNotNegative } from "../units/guard.ts";
import { tapLossDb } from "./splitterLoss.ts";

/** Terminals one behind the other on one fiber, each but the last behind an unequal tap. */
export type TapChain = {
  /** Share of the light each tap gives its terminal; the last terminal gets all that arrives and has none. */
  readonly sharesFrac: readonly number[];
  /** From the start of the chain to the input of each terminal, dB. */
  readonly lossesDb: readonly number[];
};

/**
 * Losses along a chain of taps.
 *
 * @param sharesFrac share each tap gives its terminal, over 0 and under 1; one fewer than terminals
 * @param excessDb   what a tap itself loses on both its legs, dB, 0 or more
 * @param betweenDb  loss ahead of each terminal from the one before, dB; one a terminal, the first from the start of the chain
 * @throws RangeError when a figure is out of its range or the lists do not fit together
 * @source tap leg -10 log10(share) + excess, through leg -10 log10(1 - share) + excess; checked in tests/standards/splitterLoss.test.ts
 */
export function tapChain(sharesFrac: readonly number[], excessDb: number, betweenDb: readonly number[]): TapChain {
  if (sharesFrac.length !== betweenDb.length - 1)
    throw new RangeError("a chain has one tap fewer than terminals: the last gets all that arrives");
  let arrivingDb = 0;
  const lossesDb = betweenDb.map((lossDb, index) => {
    requireNotNegative("betweenDb", lossDb);
    arrivingDb += lossDb;
    const share = sharesFrac[index];
    if (share === undefined) return arrivingDb;
    const hereDb = arrivingDb + tapLossDb(share, excessDb);
    arrivingDb += tapLossDb(1 - share, excessDb);
    return hereDb;
  });
  return { sharesFrac, lossesDb };
}

/** A tap that can be had: what the light loses to its own terminal's ports, and to what comes behind it, dB. */
export type Tap = { readonly legDb: number; readonly throughDb: number };

/** A terminal that lets light go on: the loss ahead of it from the one before, dB, and the taps it may have. */
export type TapStop<T extends Tap> = { readonly aheadDb: number; readonly offered: readonly T[] };

/**
 * The taps of a chain whose worst terminal loses least.
 *
 * From the far end: whatever comes after a tap is worth no more than its worst loss, so each tap is chosen by itself; of equal ones
 * the one that gives its terminal more.
 *
 * @param stops  from the start of the chain, all but the last
 * @param end    the last terminal, which gets all that arrives
 * @returns the tap of each stop, and the worst loss from the start of the chain to a terminal's ports, dB
 * @throws RangeError when a stop is offered none
 * @source equal to trying every chain, in tests/property/tapChain.test.ts
 */
export function bestTaps<T extends Tap>(
  stops: readonly TapStop<T>[],
  end: { readonly aheadDb: number; readonly legDb: number },
): { readonly taps: readonly T[]; readonly worstDb: number } {
  const taps: T[] = [];
  let behindDb = end.aheadDb + end.legDb;
  for (const { aheadDb, offered } of stops.toReversed()) {
    const worstDb = (tap: Tap) => Math.max(tap.legDb, tap.throughDb + behindDb);
    const best = offered.toSorted((a, b) => worstDb(a) - worstDb(b) || a.legDb - b.legDb)[0];
    if (best === undefined) throw new RangeError("a chain of several terminals needs a tap to choose");
    taps.unshift(best);
    behindDb = aheadDb + worstDb(best);
  }
  return { taps, worstDb: behindDb };
}

/**
 * The chain whose worst terminal loses least, of shares that can be had.
 *
 * @param offeredFrac shares that can be had, each over 0 and under 1; at least one where there are two terminals
 * @throws RangeError when no share is offered where one is needed
 */
export function bestTapChain(offeredFrac: readonly number[], excessDb: number, betweenDb: readonly number[]): TapChain {
  const offered = offeredFrac.map((shareFrac) => ({
    shareFrac,
    legDb: tapLossDb(shareFrac, excessDb),
    throughDb: tapLossDb(1 - shareFrac, excessDb),
  }));
  const stops = betweenDb.slice(0, -1).map((aheadDb) => ({ aheadDb, offered }));
  const { taps } = bestTaps(stops, { aheadDb: betweenDb.at(-1) ?? 0, legDb: 0 });
  const sharesFrac = taps.map((one) => one.shareFrac);
  return tapChain(sharesFrac, excessDb, betweenDb);
}
