import { costOf, openField } from "../field.ts";
import { limitedWatch } from "../limitedWatch.ts";
import { partOf } from "../part.ts";
import type { Problem } from "../problem.ts";
import { solvePlacement } from "../solvePlacement.ts";
import type { PartPlan } from "./planParts.ts";

/**
 * Points a mend takes in. The terminals of two parts are out of step where they meet, and it takes a stretch of line to bring them in
 * step: over four streets of 3,000 units, each in four parts, the cost above the whole's is 710 in all with 20 points, 40 with 80.
 */
const pointsAround = 80;
/** Steps a mend may take: those of some hundred units are proven in fewer as a rule. */
const stepLimit = 5_000;

/**
 * Lays out anew what lies around the end of a part, the rest as it stands.
 *
 * The points are those that shared units reach, those that the units on them reach, and so on; the units are all that are on these
 * points and the shared ones that nobody serves. Nothing else is touched, so no point gets more than it holds. What comes out is taken
 * where it serves all that were served and costs less or serves more.
 *
 * @param pointOf  by unit its point or -1; changed in place
 */
export function mendCut(problem: Problem, plan: PartPlan, part: number, pointOf: Int32Array): void {
  const shared = plan.units[part].filter((unit) => plan.sharedFrom[unit] === part);
  if (shared.length === 0) return;
  const nearParts = new Set<number>();
  const reach = (units: Iterable<number>): Set<number> => {
    const points = new Set<number>();
    for (const unit of units)
      for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1) {
        points.add(problem.arcPoint[arc]);
        nearParts.add(plan.partOf[problem.arcPoint[arc]]);
      }
    return points;
  };
  const unitsOn = (points: ReadonlySet<number>): Set<number> =>
    new Set([...nearParts].flatMap((near) => Array.from(plan.units[near]).filter((unit) => points.has(pointOf[unit]))));
  let points = reach(shared);
  for (let count = 0; count < points.size && points.size < pointsAround; ) {
    count = points.size;
    points = reach([...shared, ...unitsOn(points)]);
  }
  const units = new Set([...shared.filter((unit) => pointOf[unit] === -1), ...unitsOn(points)]);

  const around = partOf(problem, inOrder(plan, nearParts, points), Int32Array.from(units).sort());
  const field = openField(around.problem);
  const numberOf = new Map(Array.from(around.points, (point, number) => [point, number]));
  const present = Int32Array.from(around.units, (unit) => numberOf.get(pointOf[unit]) ?? -1);
  const watch = limitedWatch(
    { stepLimit, timeLimitS: Number.POSITIVE_INFINITY },
    () => 0,
    () => false,
  );
  const found = solvePlacement(around.problem, watch, { gap: 0, seed: 1, kept: present });
  const loses = found.pointOf.some((point, number) => point === -1 && present[number] !== -1);
  if (loses || costOf(field, found.pointOf) >= costOf(field, present)) return;
  around.units.forEach((unit, number) => {
    pointOf[unit] = around.points[found.pointOf[number]] ?? -1;
  });
}

function inOrder(plan: PartPlan, parts: ReadonlySet<number>, points: ReadonlySet<number>): Int32Array {
  return Int32Array.from(
    [...parts]
      .sort((a, b) => a - b)
      .flatMap((part) => Array.from(plan.points[part]).filter((point) => points.has(point))),
  );
}
