import type { Placement, Watch } from "../problem.ts";
import type { Graph } from "./graph.ts";

/** The best layout known and the best bound proven, told on as they come. */
export type Incumbent = {
  readonly cost: () => number;
  readonly arcOf: () => Int32Array | null;
  readonly bound: () => number;
  readonly offer: (found: { arcOf: Int32Array; cost: number } | null) => boolean;
  /** hears a bound that holds for every layout */
  readonly prove: (bound: number) => void;
  /** no node whose bound reaches this holds a layout better than the best known */
  readonly pruneAt: () => number;
  readonly proven: () => boolean;
  readonly placement: () => Placement | null;
};

/** Room for rounding in sums of costs, as a part of the sum. */
const rounding = 1e-9;

/**
 * Starts with no layout.
 *
 * @param gap  the search may end when the bound is within this part of the cost
 */
export function makeIncumbent(graph: Graph, watch: Watch, gap: number): Incumbent {
  let cost = Number.POSITIVE_INFINITY;
  let arcOf: Int32Array | null = null;
  let bound = Number.NEGATIVE_INFINITY;

  // the least cost still to be looked for: with whole costs, one less than the best known
  const pruneAt = (): number =>
    graph.wholeCosts ? cost - 1 + 1e-6 + rounding * Math.abs(cost) : cost - rounding * Math.abs(cost);
  const placement = (): Placement | null =>
    arcOf && { pointOf: Int32Array.from(arcOf, (arc) => graph.arcPoint[arc]), cost, bound };
  const tell = (): void => {
    const best = placement();
    if (best) watch.better?.(best);
  };
  return {
    cost: () => cost,
    arcOf: () => arcOf,
    bound: () => bound,
    offer(found) {
      if (!found || found.cost >= cost - rounding * Math.abs(cost === Number.POSITIVE_INFINITY ? 0 : cost))
        return false;
      cost = found.cost;
      arcOf = found.arcOf.slice();
      bound = Math.min(bound, cost);
      tell();
      return true;
    },
    prove(proof) {
      const whole = graph.wholeCosts ? Math.ceil(proof - 1e-6 - rounding * Math.abs(proof)) : proof;
      const next = proof >= pruneAt() ? cost : Math.min(whole, cost);
      if (next <= bound) return;
      bound = next;
      tell();
    },
    pruneAt,
    proven: () => cost < Number.POSITIVE_INFINITY && cost - bound <= gap * Math.abs(cost),
    placement,
  };
}
