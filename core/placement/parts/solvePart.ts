import { partOf } from "../part.ts";
import type { Problem, Watch } from "../problem.ts";
import { solvePlacement } from "../solvePlacement.ts";
import type { PartPlan } from "./planParts.ts";
import { sharedPrices } from "./sharedPrices.ts";

/** What a part came to; lists by its units. */
export type PartAnswer = {
  /** by number in the whole; -1 for a unit left to another part, or to none */
  readonly pointOf: Int32Array;
  /** Proven: no layout of the part costs less, units it leaves to others counted at their price. */
  readonly bound: number;
  /** of units that other parts reach too; 0 for the others */
  readonly price: Float64Array;
};

/**
 * Solves one part by itself; a unit that other parts reach too may be left to them at its price.
 *
 * Leaving one is a place of its own: a point that holds just that unit, at the price. So the part is a problem like any other.
 *
 * The bounds of all parts prove one of the whole. Take any layout of the whole and look at each part's share in it: its points, the
 * units they serve, and the price of each unit it reaches that is served elsewhere. A unit that r parts reach is served by one of
 * them and paid for by the r - 1 others, so
 *
 *     sum over parts of the share's cost = cost of the layout + sum over shared units of (r - 1) x price.
 *
 * Each share is a layout of its part and costs at least the part's bound. Hence, whatever the prices,
 *
 *     sum of the parts' bounds - sum over shared units of (r - 1) x price <= cost of any layout.
 *
 * A shared unit the layout leaves out is paid for by all r: then its price is taken off once more.
 *
 * @source Lagrangian decomposition, Guignard and Kim 1987
 */
export function solvePart(
  problem: Problem,
  plan: PartPlan,
  part: number,
  watch: Watch,
  options: { readonly gap: number; readonly seed: number },
): PartAnswer {
  const units = plan.units[part];
  const price = pricesOf(problem, plan, part);
  const own = partOf(problem, plan.points[part], units);
  const { problem: priced, pointAt } = withWayOut(own.problem, price, (number) => plan.sharedFrom[units[number]] >= 0);
  const { pointOf, bound } = solvePlacement(priced, watch, options);
  const found = pointOf.map((point) => (point === -1 ? -1 : (plan.points[part][pointAt[point]] ?? -1)));
  return { pointOf: found, bound, price };
}

function pricesOf(problem: Problem, plan: PartPlan, part: number): Float64Array {
  const units = plan.units[part];
  const cuts = new Set(units.map((unit) => plan.sharedFrom[unit]));
  cuts.delete(-1);
  const prices = new Map([...cuts].flatMap((cut) => [...sharedPrices(problem, plan, cut)]));
  return Float64Array.from(units, (unit) => prices.get(unit) ?? 0);
}

/**
 * A point for each shared unit at which it is left to others, behind the last of its own so that the order along the strand stays.
 *
 * @returns pointAt: by point its number before, -1 for a way out
 */
function withWayOut(
  own: Problem,
  price: Float64Array,
  isShared: (unit: number) => boolean,
): { readonly problem: Problem; readonly pointAt: Int32Array } {
  const leaving: number[][] = own.points.map(() => []);
  price.forEach((_, unit) => {
    if (isShared(unit)) leaving[own.arcPoint[own.firstArc[unit + 1] - 1]].push(unit);
  });
  const points: Problem["points"][number][] = [];
  const pointAt: number[] = [];
  const numberOf = new Int32Array(own.points.length);
  const wayOut = new Int32Array(own.demand.length).fill(-1);
  own.points.forEach((point, number) => {
    numberOf[number] = points.length;
    points.push(point);
    pointAt.push(number);
    for (const unit of leaving[number]) {
      wayOut[unit] = points.length;
      points.push({ modules: [{ capacity: own.demand[unit], cost: 0 }] });
      pointAt.push(-1);
    }
  });
  const firstArc = new Int32Array(own.firstArc.length);
  const arcPoint: number[] = [];
  const arcCost: number[] = [];
  for (let unit = 0; unit < own.demand.length; unit += 1) {
    for (let arc = own.firstArc[unit]; arc < own.firstArc[unit + 1]; arc += 1) {
      arcPoint.push(numberOf[own.arcPoint[arc]]);
      arcCost.push(own.arcCost[arc]);
    }
    if (wayOut[unit] >= 0) {
      arcPoint.push(wayOut[unit]);
      arcCost.push(price[unit]);
    }
    firstArc[unit + 1] = arcPoint.length;
  }
  const problem: Problem = {
    points,
    demand: own.demand,
    firstArc,
    arcPoint: Int32Array.from(arcPoint),
    arcCost: Float64Array.from(arcCost),
  };
  return { problem, pointAt: Int32Array.from(pointAt) };
}
