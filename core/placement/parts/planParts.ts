import { openField } from "../field.ts";
import type { Problem } from "../problem.ts";
import { sweepOrder } from "../sweep.ts";

/** A problem cut into parts of points that are solved one by one; each point is in one part, a unit in each that reaches it. */
export type PartPlan = {
  /** by part its points, in order along the strand; the parts follow one another */
  readonly points: readonly Int32Array[];
  /** by part the units its points reach, by growing number */
  readonly units: readonly Int32Array[];
  /** by point */
  readonly partOf: Int32Array;
  /** by unit: the first part that reaches it where more than one does, -1 elsewhere */
  readonly sharedFrom: Int32Array;
  /** by unit: how many parts reach it */
  readonly partCount: Int32Array;
};

/** The last part of the points that may go to one part or the next, so that the cut falls where few units reach over it. */
const searchedShare = 0.3;

/**
 * Cuts a problem into parts of about so many units.
 *
 * The points are taken in order along the strand. Each cut falls, within the last points that would still go to the part, where
 * units with the fewest ports in all can be reached from both sides: between two things that do not hang together it is none, and
 * such a cut costs nothing. Work and room grow with the arcs. A unit without an arc is in no part.
 */
export function planParts(problem: Problem, unitsPerPart: number): PartPlan {
  const field = openField(problem);
  const order = sweepOrder(field);
  const place = new Int32Array(order.length);
  order.forEach((point, at) => {
    place[point] = at;
  });
  const crossing = portsAcross(problem, place);
  const share = new Float64Array(order.length);
  order.forEach((point, at) => {
    for (let one = field.firstPointArc[point]; one < field.firstPointArc[point + 1]; one += 1) {
      const unit = field.arcUnit[field.pointArc[one]];
      share[at] += 1 / (problem.firstArc[unit + 1] - problem.firstArc[unit]);
    }
  });
  const points: Int32Array[] = [];
  for (let from = 0; from < order.length; ) {
    const to = nextCut(share, crossing, from, unitsPerPart);
    points.push(order.slice(from, to));
    from = to;
  }
  return withUnits(problem, points);
}

/** By place in the order: the ports of units reached both from before it and from it on. */
function portsAcross({ demand, firstArc, arcPoint }: Problem, place: Int32Array): Float64Array {
  const change = new Float64Array(place.length + 1);
  demand.forEach((ports, unit) => {
    let first = place.length;
    let last = -1;
    for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) {
      first = Math.min(first, place[arcPoint[arc]]);
      last = Math.max(last, place[arcPoint[arc]]);
    }
    if (last <= first) return;
    change[first + 1] += ports;
    change[last + 1] -= ports;
  });
  for (let at = 1; at < change.length; at += 1) change[at] += change[at - 1];
  return change;
}

/** Where the part from `from` ends; what would be left over by itself goes with it. */
function nextCut(share: Float64Array, crossing: Float64Array, from: number, unitsPerPart: number): number {
  let taken = 0;
  let best = -1;
  for (let at = from; at < share.length; at += 1) {
    taken += share[at];
    if (taken > unitsPerPart && best >= 0) return hasHalf(share, best, unitsPerPart) ? best : share.length;
    const isLate = taken >= (1 - searchedShare) * unitsPerPart;
    if (isLate && (best < 0 || crossing[at + 1] <= crossing[best])) best = at + 1;
  }
  return share.length;
}

function hasHalf(share: Float64Array, from: number, unitsPerPart: number): boolean {
  let taken = 0;
  for (let at = from; at < share.length && taken < unitsPerPart / 2; at += 1) taken += share[at];
  return taken >= unitsPerPart / 2;
}

function withUnits({ demand, firstArc, arcPoint, points: { length } }: Problem, points: Int32Array[]): PartPlan {
  const partOf = new Int32Array(length);
  points.forEach((own, part) => {
    for (const point of own) partOf[point] = part;
  });
  const units: number[][] = points.map(() => []);
  const sharedFrom = new Int32Array(demand.length).fill(-1);
  const partCount = new Int32Array(demand.length);
  for (let unit = 0; unit < demand.length; unit += 1) {
    const reached = new Set(arcPoint.subarray(firstArc[unit], firstArc[unit + 1]).map((point) => partOf[point]));
    for (const part of reached) units[part].push(unit);
    partCount[unit] = reached.size;
    if (reached.size > 1) sharedFrom[unit] = Math.min(...reached);
  }
  return { points, units: units.map((own) => Int32Array.from(own)), partOf, sharedFrom, partCount };
}
