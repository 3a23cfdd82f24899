import { componentsOf } from "./components.ts";
import { openField } from "./field.ts";
import { searchGeneral } from "./general/searchGeneral.ts";
import { type KeptLayout, keptLayout, orKept } from "./keptLayout.ts";
import { type Part, partOf } from "./part.ts";
import type { Placement, Problem, Watch } from "./problem.ts";
import { isDense, searchDense } from "./searchDense.ts";
import { searchStrand } from "./searchStrand.ts";
import { slack } from "./strandProgram.ts";
import { hopelessUnits, type Unserved, unitsByPoint, whyLeftOut } from "./unserved.ts";
import { unservedWords } from "./words.ts";

/** A layout with its bound, and the units it cannot serve: both costs are those of the others. */
export type Solution = Placement & {
  readonly status: "optimal" | "bounded" | "infeasible";
  readonly unserved: readonly Unserved[];
};

type Options = {
  /** part of the cost its bound may stay below; 0 to prove it */
  readonly gap: number;
  /** for searches that draw lots */
  readonly seed: number;
  /** Whether to end before the proof: then it is done in a moment, watched or not. */
  readonly isQuick?: boolean;
  /** A former layout of nearly the same: by unit the point it was on, -1 where there was none. Not heeded where `openExactly` is given. */
  readonly kept?: Int32Array | undefined;
};

/**
 * Cheapest placement found until the gap is small enough, the proof is whole or the watch ends it.
 *
 * Same problem, same answer as far as it came: time only ends the search. What does not hang together is searched by turns, so that
 * each part has its first layout whenever the end comes.
 *
 * A kept layout, as far as it still fits, is there at once and gives way only to one that costs less. So the answer depends on it too:
 * it is never dearer than the kept one and, where both are proven, costs what it costs without; but of several cheapest layouts, or of
 * the units that could stay out where not all can be served, it may be others.
 */
export function solvePlacement(problem: Problem, watch: Watch, options: Options): Solution {
  const hopeless = hopelessUnits(problem);
  if (problem.openExactly !== undefined) return solveExactly(problem, hopeless, watch, options);
  const without = new Set(hopeless.map(({ unit }) => unit));
  const searches = componentsOf(problem).flatMap(({ points, units }) => {
    const servable = units.filter((unit) => !without.has(unit));
    return openSearch(partOf(problem, points, servable), watch, options) ?? [];
  });
  const together = joiner(problem.demand.length, searches);
  let open = searches;
  while (open.length > 0) {
    if (watch.better) watch.better(together());
    if (watch.stopped()) break;
    open = open.filter((search) => advance(search, options.gap));
  }
  const { pointOf, cost, bound } = together();
  const leftOut = searches.flatMap((search) => [...search.surplus, ...leftOutOf(search.part, search.now)]);
  const unserved = [...hopeless, ...leftOut]
    .map(({ unit, reason }) => ({ unit, reason }))
    .sort((a, b) => a.unit - b.unit);
  if (unserved.length > 0) return { pointOf, cost, bound, status: "infeasible", unserved };
  return { pointOf, cost, bound, status: statusOf({ pointOf, cost, bound }), unserved };
}

/** Exactly so many points open: one search over the whole. */
function solveExactly(
  problem: Problem,
  hopeless: readonly Unserved[],
  watch: Watch,
  options: { readonly gap: number; readonly seed: number },
): Solution {
  const all = Int32Array.from(problem.demand, (_, unit) => unit);
  const found = hopeless.length === 0 ? searchGeneral(problem, watch, options) : null;
  if (found !== null) return { ...found, status: statusOf(found), unserved: [] };
  const reason = unservedWords.notSoMany(problem.openExactly ?? 0);
  const others = Array.from(all, (unit) => hopeless.find((one) => one.unit === unit) ?? { unit, reason });
  return { pointOf: all.fill(-1), cost: 0, bound: 0, status: "infeasible", unserved: others };
}

function statusOf({ cost, bound }: Placement): "optimal" | "bounded" {
  return bound >= cost - slack(cost) ? "optimal" : "bounded";
}

/** The search of one part: how far it is, and how it goes on. */
type Search = {
  readonly part: Part;
  /** units that are more than the part can hold; the search is for the others */
  readonly surplus: readonly Unserved[];
  readonly leaveOutCost: number;
  readonly kept: KeptLayout | null;
  readonly steps: Generator<Placement>;
  now: Placement;
  /** what the units left out now cost together */
  outCost: number;
};

/** Takes the first step. Where the points in reach are full, the units left over are set aside: the search is for the others. */
function openSearch(part: Part, watch: Watch, options: Options): Search | null {
  if (part.units.length === 0) return null;
  const { isQuick = false } = options;
  const kept = options.kept ? keptLayout(part, options.kept) : null;
  const steps =
    isDense(part.problem) && !isQuick
      ? searchDense(part.problem, watch, options)
      : searchStrand(part.problem, watch.stopped, { isQuick, start: isQuick ? null : kept });
  const first = steps.next();
  if (first.done) return null;
  const now = orKept(kept, first.value);
  const leftOut = leftOutOf(part, now);
  if (leftOut.length === 0 || !leftOut.every((one) => one.isFull)) {
    const leaveOutCost = openField(part.problem).leaveOutCost[0] ?? 0;
    return { part, surplus: [], kept, steps, now, leaveOutCost, outCost: outCostOf(now.pointOf, leaveOutCost) };
  }
  const rest = part.units.filter((_, number) => now.pointOf[number] !== -1);
  const search = openSearch(partOf(part.whole, part.points, rest), watch, options);
  return search === null ? null : { ...search, surplus: [...leftOut, ...search.surplus] };
}

/** @returns false where the search has come to its end */
function advance(search: Search, gap: number): boolean {
  const { cost, bound } = served(search);
  if (bound >= cost - Math.max(slack(search.now.cost), gap * cost)) return false;
  const next = search.steps.next();
  if (next.done) return false;
  const now = orKept(search.kept, next.value);
  // steps of a proof are many and leave the layout as it is: it is not gone through again
  if (now.pointOf !== search.now.pointOf) search.outCost = outCostOf(now.pointOf, search.leaveOutCost);
  search.now = now;
  return true;
}

function outCostOf(pointOf: Int32Array, leaveOutCost: number): number {
  let outCost = 0;
  for (const point of pointOf) if (point === -1) outCost += leaveOutCost;
  return outCost;
}

/** Cost and bound of the units served, among layouts that leave out as many. */
function served({ now, outCost }: Search): { cost: number; bound: number } {
  return { cost: now.cost - outCost, bound: Math.max(0, now.bound - outCost) };
}

/** Joins what the searches have whenever it is asked; the layout is the same array as long as it is the same layout. */
function joiner(unitCount: number, searches: readonly Search[]): () => Placement {
  let joined: readonly Int32Array[] = [];
  let pointOf = new Int32Array(unitCount).fill(-1);
  return () => {
    let cost = 0;
    let bound = 0;
    for (const search of searches) {
      const own = served(search);
      cost += own.cost;
      bound += own.bound;
    }
    if (searches.some(({ now }, number) => now.pointOf !== joined[number])) {
      joined = searches.map(({ now }) => now.pointOf);
      pointOf = joinedLayout(unitCount, searches);
    }
    return { pointOf, cost, bound };
  };
}

function joinedLayout(unitCount: number, searches: readonly Search[]): Int32Array<ArrayBuffer> {
  const pointOf = new Int32Array(unitCount).fill(-1);
  for (const { part, now } of searches)
    now.pointOf.forEach((point, number) => {
      if (point !== -1) pointOf[part.units[number]] = part.points[point];
    });
  return pointOf;
}

function leftOutOf({ problem, units }: Part, { pointOf }: Placement) {
  const onPoint = unitsByPoint(pointOf);
  return Array.from(units).flatMap((unit, number) =>
    pointOf[number] === -1 ? [{ unit, ...whyLeftOut(problem, onPoint, number) }] : [],
  );
}
