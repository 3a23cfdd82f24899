import { openField } from "./field.ts";
import { searchGeneral } from "./general/searchGeneral.ts";
import type { Placement, Problem, Watch } from "./problem.ts";
import { searchStrand } from "./searchStrand.ts";

/** Points a unit reaches on average, and ports of a point, up to which the strand program keeps few enough states. */
const fewPoints = 16;
const fewPorts = 64;

/** Whether a problem is too closely woven for the strand program. */
export function isDense(problem: Problem): boolean {
  return problem.arcPoint.length > fewPoints * problem.demand.length || hasLargePoints(problem);
}

function hasLargePoints(problem: Problem): boolean {
  return openField(problem).capacity.some((ports) => ports > fewPorts);
}

/**
 * Placement on a dense graph: the first steps of the strand search, only one where the points are large, then the general search.
 *
 * Yields what it has after each step, as the strand search does.
 */
export function* searchDense(
  problem: Problem,
  watch: Watch,
  options: { readonly seed: number; readonly gap: number },
): Generator<Placement> {
  const isLarge = hasLargePoints(problem);
  let best: Placement | null = null;
  for (const placement of searchStrand(problem, watch.stopped, { isQuick: true, start: null })) {
    best = placement;
    yield placement;
    if (isLarge) break;
  }
  const found = searchGeneral(problem, { elapsedS: watch.elapsedS, stopped: watch.stopped }, options);
  if (best === null || found === null) return;
  const { pointOf, cost } = found.cost < best.cost ? found : best;
  yield { pointOf, cost, bound: Math.min(cost, Math.max(best.bound, found.bound)) };
}
