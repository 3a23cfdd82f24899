/** A place a terminal may hang, as the program sees it. */
export type Facility = {
  /** Units within reach by their position in the order along the strand, ascending, each with the cost of its drop. */
  readonly arcs: readonly { readonly unit: number; readonly cost: number }[];
  /** Cost of holding n units, at index n; 0 at 0, infinite where no terminal holds so many. */
  readonly openCosts: readonly number[];
};

/** More than any terminal and drop could cost: serving one unit more is worth any price. */
const unservedCost = 1e9;

type Plan = {
  readonly cost: number;
  /** Facility that serves the last run of units; -1 where the last unit is left out. */
  readonly facility: number;
  readonly from: number;
  readonly before: Plan | null;
};

/**
 * Cheapest layout in which every terminal serves a contiguous run of units.
 *
 * Exact where each unit needs one port and setbacks are equal; elsewhere almost always within a few tenths of a percent. Work
 * grows with units in reach times the largest load.
 *
 * @param unitCount   units, in order along the strand
 * @param facilities  places, in order along the strand
 * @returns for each unit the index of its facility, or -1 where a run could not take it in
 * @source dynamic program over places and ends of runs; contiguity from the exchange of two crossing drops
 */
export function contiguousProgram(unitCount: number, facilities: readonly Facility[]): number[] {
  const best: Plan[] = [{ cost: 0, facility: -1, from: 0, before: null }];
  facilities.forEach((facility, index) => {
    const runs = runsOf(facility.arcs);
    for (const run of runs.toReversed()) serveRun(best, run, facility.openCosts, index);
    const first = runs[0]?.[0]?.unit;
    if (first !== undefined) leaveOut(best, first + 1);
  });
  reachTo(best, unitCount);
  return choices(unitCount, best[unitCount] ?? null);
}

/** Plans for the first e units of a run, last first, so that every plan leaned on is still without this facility. */
function serveRun(best: Plan[], run: Facility["arcs"], openCosts: readonly number[], facility: number): void {
  const start = run[0]?.unit ?? 0;
  reachTo(best, start + run.length);
  for (let end = run.length; end > 0; end -= 1) {
    let dropsCost = 0;
    let least = best[start + end];
    for (let from = end - 1; from >= 0 && end - from < openCosts.length; from -= 1) {
      dropsCost += run[from]?.cost ?? 0;
      const before = best[start + from];
      const openCost = openCosts[end - from] ?? Number.POSITIVE_INFINITY;
      if (!before || !least) continue;
      const cost = before.cost + openCost + dropsCost;
      if (cost < least.cost) least = { cost, facility, from: start + from, before };
    }
    if (least) best[start + end] = least;
  }
}

function reachTo(best: Plan[], end: number): void {
  while (best.length <= end) best.push(withoutNext(best.at(-1) ?? null, best.length - 1));
}

function leaveOut(best: Plan[], start: number): void {
  for (let end = start; end < best.length; end += 1) {
    const before = best[end - 1];
    const present = best[end];
    if (before && present && before.cost + unservedCost < present.cost) best[end] = withoutNext(before, end - 1);
  }
}

function withoutNext(before: Plan | null, from: number): Plan {
  return { cost: (before?.cost ?? 0) + unservedCost, facility: -1, from, before };
}

function runsOf(arcs: Facility["arcs"]): Facility["arcs"][] {
  const runs: { unit: number; cost: number }[][] = [];
  for (const arc of arcs) {
    const run = runs.at(-1);
    if (run && run.at(-1)?.unit === arc.unit - 1) run.push(arc);
    else runs.push([arc]);
  }
  return runs;
}

function choices(unitCount: number, last: Plan | null): number[] {
  const chosen = Array.from({ length: unitCount }, () => -1);
  let end = unitCount;
  for (let plan = last; plan?.before; plan = plan.before) {
    chosen.fill(plan.facility, plan.from, end);
    end = plan.from;
  }
  return chosen;
}
