import type { Field } from "./field.ts";
import { openKnapsacks, pricePoint } from "./knapsack.ts";

/** A price for each unit and the lower bound these prices prove. */
export type Prices = { readonly price: Float64Array; readonly bound: number };

/** Part of the last direction that is kept. */
const momentum = 0.3;
/** Rounds without a better bound until the step is halved. */
const patience = 10;

/**
 * Lagrange bound: "each unit on exactly one point" is priced instead of asked.
 *
 * L(price) = sum of price(j) + sum over i of min(0, min over module and units of M(i, load) - sum of (price(j) - c(j, i))): one
 * knapsack a point. Raised by subgradient steps of Polyak, step = share x (upper - L) / |g|^2 with g(j) = 1 - times j is served,
 * with momentum. A unit's price never exceeds what leaving it out costs.
 *
 * @param upper   cost of a good layout; from a bad one the steps stall
 * @param start   prices to go on from; null for a first guess
 * @param stopped true when the time is over
 * @source Held, Wolfe, Crowder 1974; heavy ball of Polyak 1964
 */
export function raisePrices(
  field: Field,
  upper: number,
  start: Float64Array | null,
  roundCount: number,
  stopped: () => boolean,
): Prices {
  const { unitCount, leaveOutCost } = field;
  const price = start ? start.slice() : firstPrices(field);
  let best: Prices = { price: price.slice(), bound: Number.NEGATIVE_INFINITY };
  const direction = new Float64Array(unitCount);
  const served = new Int32Array(unitCount);
  const desk = openKnapsacks(field);
  let share = 1;
  let idle = 0;
  for (let round = 0; round < roundCount && !stopped(); round += 1) {
    served.fill(0);
    let bound = 0;
    for (let unit = 0; unit < unitCount; unit += 1) bound += price[unit];
    for (let point = 0; point < field.pointCount; point += 1) bound += pricePoint(field, point, price, served, desk);
    if (bound > best.bound) {
      const isProgress = bound > best.bound + 1e-4 * (upper - best.bound);
      best = { price: price.slice(), bound };
      idle = isProgress ? 0 : idle + 1;
    } else idle += 1;
    if (idle >= patience) {
      idle = 0;
      share /= 2;
    }
    let square = 0;
    for (let unit = 0; unit < unitCount; unit += 1) square += (1 - served[unit]) ** 2;
    if (square === 0 || bound >= upper || share < 1e-3) break;
    const step = (share * (upper - bound)) / square;
    for (let unit = 0; unit < unitCount; unit += 1) {
      direction[unit] = momentum * direction[unit] + step * (1 - served[unit]);
      price[unit] = Math.min(leaveOutCost[unit], Math.max(0, price[unit] + direction[unit]));
    }
  }
  return best;
}

/** The cheapest drop and the share of the cheapest module a port. */
function firstPrices(field: Field): Float64Array {
  const { problem, capacity, firstLoad, loadCost } = field;
  const perPort = Float64Array.from(capacity, (most, point) => {
    let least = Number.POSITIVE_INFINITY;
    for (let load = 1; load <= most; load += 1) least = Math.min(least, loadCost[firstLoad[point] + load] / load);
    return least;
  });
  return Float64Array.from(problem.demand, (demand, unit) => {
    let least = field.leaveOutCost[unit];
    for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1)
      least = Math.min(least, problem.arcCost[arc] + demand * perPort[problem.arcPoint[arc]]);
    return least;
  });
}
