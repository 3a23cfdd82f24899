import type { Field } from "./field.ts";
import type { Problem } from "./problem.ts";

/**
 * The points of a problem in an order that keeps the window of the strand program small.
 *
 * The order given is kept where it does as well: points come in order along the strand as a rule.
 */
export function sweepOrder(field: Field): Int32Array {
  const given = Int32Array.from({ length: field.pointCount }, (_, point) => point);
  const swept = sweepFrom(field, sweepFrom(field, 0).at(-1) ?? 0);
  return windowSum(field.problem, swept) < windowSum(field.problem, given) ? swept : given;
}

/** From one point on, always the point the largest part of whose units is reached already. */
function sweepFrom(field: Field, start: number): Int32Array {
  const { pointCount, firstPointArc, pointArc, arcUnit } = field;
  const { firstArc, arcPoint } = field.problem;
  const reachedCount = new Int32Array(pointCount);
  const isReached = new Uint8Array(field.unitCount);
  const isTaken = new Uint8Array(pointCount);
  const order = new Int32Array(pointCount);
  let frontier: number[] = [start];
  let fresh = 0;
  for (let position = 0; position < pointCount; position += 1) {
    while (frontier.length === 0) {
      if (!isTaken[fresh]) frontier.push(fresh);
      fresh += 1;
    }
    let next = frontier[0];
    for (const point of frontier)
      if (reachedPart(field, reachedCount, point) > reachedPart(field, reachedCount, next)) next = point;
    isTaken[next] = 1;
    order[position] = next;
    const found = new Set<number>();
    for (let one = firstPointArc[next]; one < firstPointArc[next + 1]; one += 1) {
      const unit = arcUnit[pointArc[one]];
      if (isReached[unit]) continue;
      isReached[unit] = 1;
      for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) {
        const point = arcPoint[arc];
        if (reachedCount[point] === 0 && !isTaken[point]) found.add(point);
        reachedCount[point] += 1;
      }
    }
    frontier = [...frontier.filter((point) => point !== next), ...found];
  }
  return order;
}

function reachedPart({ firstPointArc }: Field, reachedCount: Int32Array, point: number): number {
  return reachedCount[point] / (firstPointArc[point + 1] - firstPointArc[point] || 1);
}

/** Points in the window, summed over the units in their order. */
function windowSum(problem: Problem, order: Int32Array): number {
  const positionOf = new Int32Array(order.length);
  order.forEach((point, position) => {
    positionOf[point] = position;
  });
  // A point is in the window from the first to the last of its units, and a unit's turn comes with its last point.
  const first = new Int32Array(order.length).fill(order.length);
  const last = new Int32Array(order.length).fill(-1);
  const turns = new Int32Array(order.length);
  for (let unit = 0; unit < problem.demand.length; unit += 1) {
    let turn = -1;
    for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1)
      turn = Math.max(turn, positionOf[problem.arcPoint[arc]]);
    if (turn < 0) continue;
    turns[turn] += 1;
    for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1) {
      const position = positionOf[problem.arcPoint[arc]];
      first[position] = Math.min(first[position], turn);
      last[position] = Math.max(last[position], turn);
    }
  }
  const turnsBefore = new Float64Array(order.length + 1);
  for (let position = 0; position < order.length; position += 1)
    turnsBefore[position + 1] = turnsBefore[position] + turns[position];
  let sum = 0;
  for (let position = 0; position < order.length; position += 1)
    if (last[position] >= 0) sum += turnsBefore[last[position] + 1] - turnsBefore[first[position]];
  return sum;
}
