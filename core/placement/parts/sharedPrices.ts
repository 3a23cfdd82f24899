import { contiguousProgram } from "../contiguous.ts";
import { costOf, openField } from "../field.ts";
import { partOf } from "../part.ts";
import { raisePrices } from "../prices.ts";
import type { Problem } from "../problem.ts";
import { unitOrderOf } from "../unitOrder.ts";
import type { PartPlan } from "./planParts.ts";

/** Points on either side of a cut whose prices are looked at; farther ones hardly move those at the cut. */
const pointsAside = 40;
const roundCount = 200;

/**
 * What the units that the end of a part shares with later parts are worth: their Lagrange prices in a problem of its own around the
 * cut. Any price gives a bound; these give a good one. The same from whichever part it is asked.
 *
 * @returns by unit
 */
export function sharedPrices(problem: Problem, plan: PartPlan, part: number): ReadonlyMap<number, number> {
  const shared = plan.units[part].filter((unit) => plan.sharedFrom[unit] === part);
  if (shared.length === 0) return new Map();
  const near = new Set([
    ...plan.points[part].slice(-pointsAside),
    ...(plan.points[part + 1] ?? []).slice(0, pointsAside),
  ]);
  const arcsOf = (unit: number) => problem.arcPoint.subarray(problem.firstArc[unit], problem.firstArc[unit + 1]);
  for (const unit of shared) for (const point of arcsOf(unit)) near.add(point);
  const units = new Set<number>();
  for (const side of [part, part + 1])
    for (const unit of plan.units[side] ?? []) if (arcsOf(unit).some((point) => near.has(point))) units.add(unit);
  const window = partOf(problem, Int32Array.from(near), Int32Array.from(units).sort());
  const field = openField(window.problem);
  const upper = costOf(field, contiguousProgram(field, unitOrderOf(window.problem)));
  const { price } = raisePrices(field, upper, null, roundCount, () => false);
  const isShared = new Set(shared);
  const priced = Array.from(window.units, (unit, number) => [unit, price[number]] as const);
  return new Map(priced.filter(([unit]) => isShared.has(unit)));
}
