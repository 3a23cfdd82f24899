import { costOf, openField } from "../field.ts";
import type { Placement, Problem } from "../problem.ts";
import { seatLeftOut } from "../seatLeftOut.ts";
import { mendCut } from "./mendCut.ts";
import type { PartPlan } from "./planParts.ts";
import type { PartAnswer } from "./solvePart.ts";

/**
 * One layout and one bound out of those of the parts.
 *
 * A unit that two parts serve stays where its drop is cheaper. Around each cut the points that shared units reach are then laid out
 * anew with the units on them; last, whoever is still left out is seated where a chain of moves makes room.
 *
 * @returns cost and bound of the units served: the bound holds for every layout that leaves out no others (`solvePart.ts`)
 */
export function joinParts(problem: Problem, plan: PartPlan, answers: readonly PartAnswer[]): Placement {
  const pointOf = new Int32Array(problem.demand.length).fill(-1);
  let bound = 0;
  answers.forEach((answer, part) => {
    bound += answer.bound;
    plan.units[part].forEach((unit, number) => {
      if (plan.sharedFrom[unit] === part) bound -= (plan.partCount[unit] - 1) * answer.price[number];
      const found = answer.pointOf[number];
      if (found !== -1 && arcCost(problem, unit, found) < arcCost(problem, unit, pointOf[unit])) pointOf[unit] = found;
    });
  });
  for (let part = 0; part < plan.points.length; part += 1) mendCut(problem, plan, part, pointOf);
  const field = openField(problem);
  seatLeftOut(field, pointOf);
  let cost = costOf(field, pointOf);
  answers.forEach((answer, part) => {
    plan.units[part].forEach((unit, number) => {
      if (plan.sharedFrom[unit] === part && pointOf[unit] === -1) bound -= answer.price[number];
    });
  });
  pointOf.forEach((point, unit) => {
    if (point === -1) cost -= field.leaveOutCost[unit];
  });
  return { pointOf, cost, bound: Math.min(bound, cost) };
}

/** Infinite for no point. */
function arcCost({ firstArc, arcPoint, arcCost: costs }: Problem, unit: number, point: number): number {
  for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) if (arcPoint[arc] === point) return costs[arc];
  return Number.POSITIVE_INFINITY;
}
