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

/**
 * The chain whose worst terminal loses least, of taps that can be had.
 *
 * From the far end: whatever comes after a tap is worth no more than its worst loss, so each tap is chosen by itself; of equal ones
 * the larger share.
 *
 * @param offeredFrac shares that can be had, each over 0 and under 1; at least one where there are two terminals
 * @throws RangeError when no share is offered where one is needed
 * @source equal to trying every chain, in tests/property/tapChain.test.ts
 */
export function bestTapChain(offeredFrac: readonly number[], excessDb: number, betweenDb: readonly number[]): TapChain {
  const shares: number[] = [];
  let worstAfterDb = 0;
  for (let index = betweenDb.length - 2; index >= 0; index -= 1) {
    const behindDb = (betweenDb[index + 1] ?? 0) + worstAfterDb;
    const worstDb = (share: number) => Math.max(tapLossDb(share, excessDb), tapLossDb(1 - share, excessDb) + behindDb);
    const best = offeredFrac.toSorted((a, b) => worstDb(a) - worstDb(b) || b - a)[0];
    if (best === undefined) throw new RangeError("a chain of several terminals needs a tap to choose");
    shares.unshift(best);
    worstAfterDb = worstDb(best);
  }
  return tapChain(shares, excessDb, betweenDb);
}
