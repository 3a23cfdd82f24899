/** The least of a height, and where it is. */
export type Least = { readonly heightM: number; readonly offsetM: number };

/**
 * Least of a height that is a parabola or straight between neighbouring stops: strand between point loads over ground between
 * measured points.
 *
 * @param stops     ends of the pieces, m, rising, two or more
 * @param heightAt  height at an offset, m
 */
export function leastAlong(stops: readonly number[], heightAt: (offsetM: number) => number): Least {
  const at = (offsetM: number): Least => ({ heightM: heightAt(offsetM), offsetM });
  const [first] = stops;
  if (first === undefined) throw new RangeError("there is no stop to look between");
  let least = at(first);
  let before = first;
  for (const stop of stops.slice(1)) {
    for (const one of [at(stop), at(turningPoint(before, stop, heightAt))])
      if (one.heightM < least.heightM) least = one;
    before = stop;
  }
  return least;
}

/** Where the parabola through both ends and the middle of a piece is lowest within it; its first end where it opens downwards. */
function turningPoint(fromM: number, toM: number, heightAt: (offsetM: number) => number): number {
  const middleM = (fromM + toM) / 2;
  const [from, middle, to] = [heightAt(fromM), heightAt(middleM), heightAt(toM)];
  const bend = (from + to) / 2 - middle;
  if (!(bend > 0)) return fromM;
  const part = (from - to) / (4 * bend);
  return middleM + Math.min(Math.max(part, -1), 1) * (toM - fromM) * 0.5;
}
