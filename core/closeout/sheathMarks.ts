/** A length mark read off the sheath, in the order of the places along the cable. */
export type MarkRead = {
  /** What people call the place: a pole's tag, a terminal's name. */
  readonly place: string;
  /** Sheath from the cable's feed end to it as drawn, coils on the way counted, m. */
  readonly drawnM: number;
  /** The figure as it is printed. */
  readonly figure: number;
};

/** How marks are held against the drawing. */
export type MarkRule = {
  /** What one of the printed figures stands for, m: 0.3048 where the sheath counts feet. */
  readonly unitM: number;
  /** A section within this share of its drawn length, and this many metres more, is as drawn. */
  readonly toleranceFrac: number;
  readonly toleranceM: number;
};

/** Sheath between two readings that are believed. */
type SheathSection = {
  readonly from: string;
  readonly to: string;
  readonly usedM: number;
  readonly drawnM: number;
  /** Used less drawn: over 0 more is stored or hangs there than drawn, under 0 some is missing. */
  readonly moreM: number;
  readonly isAsDrawn: boolean;
};

/** A reading that does not fit those before and after it. */
type DoubtedMark = {
  readonly place: string;
  readonly figure: number;
  /** The one figure with two neighbouring digits exchanged that fits; null where none or several do. */
  readonly perhaps: number | null;
};

export type SheathCount = {
  /** Whether the marks count up or down from the feed end; null where fewer than two are believed. */
  readonly counts: "up" | "down" | null;
  readonly sections: readonly SheathSection[];
  readonly doubted: readonly DoubtedMark[];
};

/**
 * Holds marks read along a cable against the drawing.
 *
 * Believed are the readings that leave the fewest things wrong, a thing being a section that is not as drawn or a reading not believed:
 * one wrong figure puts two sections off and costs less when it is doubted, cable truly missing puts off one and is told as such. A figure
 * out of order is never believed.
 *
 * @param marks  from the feed end; at most one a place
 * @throws RangeError when the rule is not of figures over 0, or the places are not in order along the cable
 * @source fewest faults; equal to trying every choice of readings, in tests/property/sheathMarks.test.ts
 */
export function countSheath(marks: readonly MarkRead[], rule: MarkRule): SheathCount {
  requireSound(marks, rule);
  const up = believe(marks, rule, 1);
  const down = believe(marks, rule, -1);
  const isDown = down.wrongCount < up.wrongCount;
  const kept = isDown ? down.kept : up.kept;
  const sign = isDown ? -1 : 1;
  const sections = kept.slice(1).map((to, index) => sectionOf(kept[index] ?? to, to, rule, sign));
  const doubted = marks
    .filter((one) => !kept.includes(one))
    .map((one) => ({ place: one.place, figure: one.figure, perhaps: perhapsOf(one, kept, rule, sign) }));
  return { counts: kept.length < 2 ? null : isDown ? "down" : "up", sections, doubted };
}

type Sign = 1 | -1;
type Believed = { readonly kept: readonly MarkRead[]; readonly wrongCount: number };

/** The best way back from a reading to the first: what it takes to be wrong, how many readings it keeps, and the one before. */
type WayBack = { readonly wrongCount: number; readonly keptCount: number; readonly before: number | null };

/** From each reading the best way back to the first; of equal ones that with more readings. */
function believe(marks: readonly MarkRead[], rule: MarkRule, sign: Sign): Believed {
  const ways: WayBack[] = [];
  marks.forEach((mark, at) => {
    let best: WayBack = { wrongCount: at, keptCount: 1, before: null };
    ways.forEach((way, index) => {
      const before = marks[index] ?? mark;
      if (!isInOrder(before, mark, sign)) return;
      const off = sectionOf(before, mark, rule, sign).isAsDrawn ? 0 : 1;
      const wrongCount = way.wrongCount + off + (at - index - 1);
      const next = { wrongCount, keptCount: way.keptCount + 1, before: index };
      if (isBetter(next, best)) best = next;
    });
    ways.push(best);
  });
  const ends = ways.map((way, at) => ({ ...way, wrongCount: way.wrongCount + marks.length - 1 - at, at }));
  const [first, ...others] = ends;
  if (!first) return { kept: [], wrongCount: 0 };
  const last = others.reduce((a, b) => (isBetter(b, a) ? b : a), first);
  const kept: MarkRead[] = [];
  for (let at: number | null = last.at; at !== null; at = ways[at]?.before ?? null)
    kept.unshift(...marks.slice(at, at + 1));
  return { kept, wrongCount: last.wrongCount };
}

function isBetter(one: WayBack, than: WayBack): boolean {
  return one.wrongCount < than.wrongCount || (one.wrongCount === than.wrongCount && one.keptCount > than.keptCount);
}

function isInOrder(before: MarkRead, after: MarkRead, sign: Sign): boolean {
  return sign * (after.figure - before.figure) >= 0;
}

function sectionOf(
  from: MarkRead,
  to: MarkRead,
  { unitM, toleranceFrac, toleranceM }: MarkRule,
  sign: Sign,
): SheathSection {
  const usedM = sign * (to.figure - from.figure) * unitM;
  const drawnM = to.drawnM - from.drawnM;
  const moreM = usedM - drawnM;
  const isAsDrawn = Math.abs(moreM) <= toleranceFrac * drawnM + toleranceM;
  return { from: from.place, to: to.place, usedM, drawnM, moreM, isAsDrawn };
}

function perhapsOf(mark: MarkRead, kept: readonly MarkRead[], rule: MarkRule, sign: Sign): number | null {
  const before = kept.findLast((one) => one.drawnM <= mark.drawnM);
  const after = kept.find((one) => one.drawnM > mark.drawnM);
  const fits = (figure: number) => {
    const read = { ...mark, figure };
    const isNear = (from: MarkRead, to: MarkRead) =>
      isInOrder(from, to, sign) && sectionOf(from, to, rule, sign).isAsDrawn;
    return (!before || isNear(before, read)) && (!after || isNear(read, after));
  };
  const fitting = before || after ? [...new Set(exchanged(mark.figure))].filter(fits) : [];
  return fitting.length === 1 ? (fitting[0] ?? null) : null;
}

/** The figure with each two neighbouring digits exchanged. */
function exchanged(figure: number): number[] {
  const digits = String(figure);
  return Array.from({ length: digits.length - 1 }, (_, at) =>
    Number(`${digits.slice(0, at)}${digits[at + 1]}${digits[at]}${digits.slice(at + 2)}`),
  ).filter((one) => one !== figure && Number.isFinite(one));
}

function requireSound(marks: readonly MarkRead[], { unitM, toleranceFrac, toleranceM }: MarkRule): void {
  if (!(unitM > 0)) throw new RangeError(`unitM must be over 0, not ${unitM}`);
  if (!(toleranceFrac >= 0 && toleranceM >= 0)) throw new RangeError("the tolerances must be 0 or more");
  if (marks.some((one, index) => index > 0 && one.drawnM < (marks[index - 1]?.drawnM ?? 0)))
    throw new RangeError("drawnM must not fall: the places are told in order along the cable");
}
