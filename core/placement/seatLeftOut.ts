import type { Field } from "./field.ts";

/**
 * Finds a place for units a layout left out, moving others along where that makes room.
 *
 * A unit takes the place in reach with room that costs least more; where all are full, the shortest chain of moves that ends at one
 * with room. Where all units ask one port, no unit stays out that some layout could serve together with those already served.
 *
 * @param pointOf  by unit its point or -1; changed in place
 * @source augmenting paths, Berge 1957
 */
export function seatLeftOut(field: Field, pointOf: Int32Array): void {
  if (!pointOf.includes(-1)) return;
  const desk = openDesk(field, pointOf);
  for (let unit = 0; unit < pointOf.length; unit += 1) {
    if (pointOf[unit] !== -1) continue;
    const direct = cheapestWithRoom(desk, unit);
    if (direct === -1) moveAlong(desk, unit);
    else put(desk, unit, direct);
  }
}

type Desk = {
  readonly field: Field;
  readonly pointOf: Int32Array;
  readonly load: Int32Array;
  /** by point, the units on it */
  readonly held: readonly Set<number>[];
};

function openDesk(field: Field, pointOf: Int32Array): Desk {
  const load = new Int32Array(field.pointCount);
  const held = Array.from({ length: field.pointCount }, () => new Set<number>());
  pointOf.forEach((point, unit) => {
    if (point === -1) return;
    load[point] += field.problem.demand[unit];
    held[point].add(unit);
  });
  return { field, pointOf, load, held };
}

function cheapestWithRoom({ field, load }: Desk, unit: number): number {
  const { firstArc, arcPoint, arcCost, demand } = field.problem;
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) {
    const point = arcPoint[arc];
    if (load[point] + demand[unit] > field.capacity[point]) continue;
    const row = field.firstLoad[point] + load[point];
    const cost = arcCost[arc] + field.loadCost[row + demand[unit]] - field.loadCost[row];
    if (cost >= least) continue;
    least = cost;
    best = point;
  }
  return best;
}

/** Breadth first over full points, from each to those its units could move to and leave room for the one that comes. */
function moveAlong(desk: Desk, unit: number): void {
  const { field, load } = desk;
  const { firstArc, arcPoint, demand } = field.problem;
  const comes = new Map<number, number>();
  const visit = (mover: number) => {
    for (let arc = firstArc[mover]; arc < firstArc[mover + 1]; arc += 1)
      if (!comes.has(arcPoint[arc])) comes.set(arcPoint[arc], mover);
  };
  visit(unit);
  for (const [point, mover] of comes) {
    const room = field.capacity[point] - load[point];
    if (demand[mover] <= room) {
      unwind(desk, comes, point);
      return;
    }
    for (const other of [...desk.held[point]].sort((a, b) => a - b))
      if (demand[mover] <= room + demand[other]) visit(other);
  }
}

function unwind(desk: Desk, comes: ReadonlyMap<number, number>, end: number): void {
  for (let point = end; point !== -1; ) {
    const mover = comes.get(point);
    if (mover === undefined) return;
    const left = desk.pointOf[mover];
    put(desk, mover, point);
    point = left;
  }
}

function put({ field, pointOf, load, held }: Desk, unit: number, point: number): void {
  const left = pointOf[unit];
  if (left !== -1) {
    load[left] -= field.problem.demand[unit];
    held[left].delete(unit);
  }
  load[point] += field.problem.demand[unit];
  held[point].add(unit);
  pointOf[unit] = point;
}
