import type { Facility } from "./contiguousProgram.ts";

type Reach = { readonly facility: number; readonly cost: number };

/** An assignment being mended: who is where, and who could be where. */
type Desk = {
  readonly served: number[];
  readonly held: readonly Set<number>[];
  readonly reachable: readonly Reach[][];
  readonly facilities: readonly Facility[];
  /** Facilities no chain of moves can empty a place in. */
  readonly closed: Set<number>;
};

/**
 * Finds a place for units a first layout left out, moving others along where that makes room.
 *
 * A unit takes the place in reach with room that costs least more; where all are full, the shortest chain of moves that ends at
 * one with room. No unit that any assignment could serve together with those already served stays out.
 *
 * @param chosen  for each unit its facility or -1
 * @returns the same list with the leftovers served where possible
 */
export function serveLeftovers(chosen: readonly number[], facilities: readonly Facility[]): number[] {
  const desk = openDesk(chosen, facilities);
  chosen.forEach((facility, unit) => {
    if (facility !== -1) return;
    const direct = cheapestWithRoom(desk, unit);
    if (direct === null) moveAlong(desk, unit);
    else put(desk, unit, direct);
  });
  return desk.served;
}

function openDesk(chosen: readonly number[], facilities: readonly Facility[]): Desk {
  const reachable: Reach[][] = chosen.map(() => []);
  facilities.forEach((one, facility) => {
    for (const { unit, cost } of one.arcs) reachable[unit]?.push({ facility, cost });
  });
  const held: Set<number>[] = facilities.map(() => new Set());
  chosen.forEach((facility, unit) => {
    held[facility]?.add(unit);
  });
  return { served: [...chosen], held, reachable, facilities, closed: new Set() };
}

function cheapestWithRoom(desk: Desk, unit: number): number | null {
  let least: { facility: number; cost: number } | null = null;
  for (const { facility, cost } of desk.reachable[unit] ?? []) {
    if (!hasRoom(desk, facility)) continue;
    const load = desk.held[facility]?.size ?? 0;
    const extra = cost + openCost(desk, facility, load + 1) - openCost(desk, facility, load);
    if (least === null || extra < least.cost) least = { facility, cost: extra };
  }
  return least?.facility ?? null;
}

/** Breadth first over full facilities, from each to those its units could move to. What a failed search has seen stays full for good. */
function moveAlong(desk: Desk, unit: number): void {
  const cameFrom = new Map<number, number>();
  const visit = (mover: number) => {
    for (const { facility } of desk.reachable[mover] ?? [])
      if (!desk.closed.has(facility) && !cameFrom.has(facility)) cameFrom.set(facility, mover);
  };
  visit(unit);
  for (const facility of cameFrom.keys()) {
    if (hasRoom(desk, facility)) {
      unwind(desk, cameFrom, facility);
      return;
    }
    for (const mover of [...(desk.held[facility] ?? [])].sort((a, b) => a - b)) visit(mover);
  }
  for (const facility of cameFrom.keys()) desk.closed.add(facility);
}

function unwind(desk: Desk, cameFrom: ReadonlyMap<number, number>, end: number): void {
  for (let facility = end; facility !== -1; ) {
    const mover = cameFrom.get(facility);
    if (mover === undefined) return;
    const left = desk.served[mover] ?? -1;
    put(desk, mover, facility);
    facility = left;
  }
}

function put(desk: Desk, unit: number, facility: number): void {
  desk.held[desk.served[unit] ?? -1]?.delete(unit);
  desk.held[facility]?.add(unit);
  desk.served[unit] = facility;
}

function hasRoom(desk: Desk, facility: number): boolean {
  return openCost(desk, facility, (desk.held[facility]?.size ?? 0) + 1) < Number.POSITIVE_INFINITY;
}

/** Infinite where no terminal holds so many. */
function openCost(desk: Desk, facility: number, load: number): number {
  return desk.facilities[facility]?.openCosts[load] ?? Number.POSITIVE_INFINITY;
}
