/** A place along a span, and what is spare there while the pole asked about is at height 0. */
type Spare = {
  /** Part of the pole's height that is part of the height at the place: 1 at the pole, 0 at the far one. */
  readonly share: number;
  readonly spareM: number;
};

/** The least of spare / share on a piece, m, and the share of the place it is at. */
export type LeastPerShare = { readonly leastM: number; readonly share: number };

/** What floating point may leave of a nothing, m: as much as the rules forgive. */
export const noiseM = 5e-10;

/**
 * Least of spare / share over a piece of a span, where spare = a + b share + c share², m: how far the pole's height could come down
 * towards 0 from there before nothing is spare somewhere on the piece.
 *
 * Solved, not tried: a / share + b + c share turns once, at share² = a / c, and there is b + 2 √(a c); else an end of the piece is
 * least. Error: that of the sums, under 1e-12 m for lengths of a line.
 *
 * @param bendM  c: four times the sag between the two, m
 * @returns -Infinity where the far end lacks already, which no height here can mend; Infinity where the piece is the far end
 */
export function leastPerShare(ends: readonly [Spare, Spare], bendM: number): LeastPerShare {
  const [near, far] = ends[0].share <= ends[1].share ? ends : [ends[1], ends[0]];
  const atEnds = [near, far]
    .filter(({ share }) => share > 0)
    .map(({ share, spareM }) => ({ leastM: spareM / share, share }));
  if (near.share === 0 && near.spareM < -noiseM) return { leastM: Number.NEGATIVE_INFINITY, share: 0 };
  const run = far.share - near.share;
  if (!(run > 0)) return leastOf(atEnds);
  const b = (far.spareM - near.spareM) / run - bendM * (near.share + far.share);
  const a = near.spareM - b * near.share - bendM * near.share ** 2;
  if (near.share === 0 && a <= noiseM) return leastOf([{ leastM: b, share: 0 }, ...atEnds]);
  const turn = a > 0 && bendM > 0 ? Math.sqrt(a / bendM) : 0;
  const atTurn = turn > near.share && turn < far.share ? [{ leastM: b + 2 * Math.sqrt(a * bendM), share: turn }] : [];
  return leastOf([...atEnds, ...atTurn]);
}

/** The least of several; Infinity where there is none. */
export function leastOf(several: readonly LeastPerShare[]): LeastPerShare {
  return several.reduce((least, one) => (one.leastM < least.leastM ? one : least), {
    leastM: Number.POSITIVE_INFINITY,
    share: 0,
  });
}
