/** A place that holds units: what it may take and what it holds that stays. */
export type Place = {
  /** Units it may hold beside those that stay. */
  readonly capacity: number;
  /** Units that stay. */
  readonly fixedCount: number;
  /** What a full one holds: fill is measured against it. */
  readonly size: number;
};

/** A place a unit may have, and what it costs there. */
export type Choice = { readonly place: number; readonly cost: number };

/** Differences below this are the noise of sums, not a gain. */
const noise = 1e-9;

/**
 * Evens the fill of places: the assignment with the least cost and, `weight` times, the sum over places of held squared over size.
 *
 * Exact for every weight: units shift along rings and chains of places until none gains. The measure is least where all places
 * are filled to one share. Step by step, each of them short, so that nobody waits for the whole.
 *
 * @param present for each unit its place; it must be among its choices
 * @param choices for each unit the places it may have
 * @param weight  cost that one unit of the measure is worth, 0 or more; 0 asks for the least cost alone
 * @returns for each unit its place
 * @throws RangeError when a unit's place is not among its choices, or a place holds more than it may
 * @source minimum-cost flow with convex arc costs by cancelling negative cycles; equal to another implementation in
 *   tests/property/evenFill.test.ts
 */
export function* evenFill(
  present: readonly number[],
  choices: readonly (readonly Choice[])[],
  places: readonly Place[],
  weight: number,
): Generator<void, readonly number[]> {
  const desk = openDesk(present, choices, places);
  for (;;) {
    const ring = yield* gainingRing(desk, weight);
    if (ring === null) return desk.placeOf;
    shift(desk, ring);
  }
}

/** Sum over places of held squared over size, from how many units each holds beside those that stay. */
export function unevenness(loads: readonly number[], places: readonly Place[]): number {
  return places.reduce((sum, { fixedCount, size }, place) => sum + (fixedCount + (loads[place] ?? 0)) ** 2 / size, 0);
}

type Desk = {
  readonly placeOf: number[];
  readonly heldBy: readonly Set<number>[];
  readonly choices: readonly (readonly Choice[])[];
  readonly places: readonly Place[];
  /** From each place the cheapest unit to shift to every other, as long as what it holds is the same. */
  readonly shiftsFrom: (readonly Arc[] | null)[];
};

/** A unit that moves on to a place. */
type Shift = { readonly unit: number; readonly to: number };

function openDesk(present: readonly number[], choices: readonly (readonly Choice[])[], places: readonly Place[]): Desk {
  const heldBy: Set<number>[] = places.map(() => new Set());
  present.forEach((place, unit) => {
    if (!(choices[unit] ?? []).some((one) => one.place === place))
      throw new RangeError(`unit ${unit} is at a place it may not have`);
    heldBy[place]?.add(unit);
  });
  const full = places.findIndex(({ capacity }, place) => (heldBy[place]?.size ?? 0) > capacity);
  if (full !== -1) throw new RangeError(`place ${full} holds more than it may`);
  return { placeOf: [...present], heldBy, choices, places, shiftsFrom: places.map(() => null) };
}

function shift({ placeOf, heldBy, shiftsFrom }: Desk, ring: readonly Shift[]): void {
  for (const { unit, to } of ring) {
    const from = placeOf[unit] ?? -1;
    heldBy[from]?.delete(unit);
    heldBy[to]?.add(unit);
    placeOf[unit] = to;
    [shiftsFrom[from], shiftsFrom[to]] = [null, null];
  }
}

/**
 * A ring of shifts that lowers the sum; null where there is none.
 *
 * Shortest ways by Bellman and Ford over the places and one node beyond them, which takes a unit of fill from the place a chain
 * ends at and gives it to the one it starts from: so a chain is a ring too.
 */
function* gainingRing(desk: Desk, weight: number): Generator<void, readonly Shift[] | null> {
  const { places } = desk;
  const beyond = places.length;
  const arcs: Arc[] = [];
  for (const place of places.keys()) {
    arcs.push(...shiftsOf(desk, place));
    yield;
  }
  arcs.push(...fillArcs(desk, weight));
  const distance = Array.from({ length: beyond + 1 }, () => 0);
  const before: (Arc | null)[] = distance.map(() => null);
  for (let pass = 0; pass <= beyond + 1; pass += 1) {
    let changed = false;
    for (const arc of arcs) {
      const cost = (distance[arc.from] ?? 0) + arc.cost;
      if (cost >= (distance[arc.to] ?? 0) - noise) continue;
      distance[arc.to] = cost;
      before[arc.to] = arc;
      changed = true;
    }
    if (!changed) return null;
    yield;
    const ring = ringIn(before);
    if (ring) return ring.flatMap((arc) => (arc.unit === null ? [] : { unit: arc.unit, to: arc.to }));
  }
  return null;
}

type Arc = { readonly from: number; readonly to: number; readonly cost: number; readonly unit: number | null };

/** The cheapest unit to shift from a place to each other. */
function shiftsOf({ heldBy, choices, shiftsFrom }: Desk, from: number): readonly Arc[] {
  const known = shiftsFrom[from];
  if (known) return known;
  const cheapest = new Map<number, Arc>();
  for (const unit of heldBy[from] ?? []) {
    const own = choices[unit] ?? [];
    const hereCost = own.find((one) => one.place === from)?.cost ?? 0;
    for (const { place: to, cost } of own) {
      if (to === from) continue;
      const extra = cost - hereCost;
      const best = cheapest.get(to);
      // of units alike the first, whenever they came
      if (!best || extra < best.cost || (extra === best.cost && unit < (best.unit ?? unit)))
        cheapest.set(to, { from, to, cost: extra, unit });
    }
  }
  const arcs = [...cheapest.values()];
  shiftsFrom[from] = arcs;
  return arcs;
}

/** What one unit more or less at a place is worth, to and from the node beyond. */
function fillArcs({ heldBy, places }: Desk, weight: number): Arc[] {
  const beyond = places.length;
  return places.flatMap(({ capacity, fixedCount, size }, place) => {
    const load = heldBy[place]?.size ?? 0;
    const held = fixedCount + load;
    const arcs: Arc[] = [];
    if (load < capacity) arcs.push({ from: place, to: beyond, cost: (weight * (2 * held + 1)) / size, unit: null });
    if (load > 0) arcs.push({ from: beyond, to: place, cost: (-weight * (2 * held - 1)) / size, unit: null });
    return arcs;
  });
}

/** A ring among the arcs that lead to each node, in the order in which it is walked; null where there is none. */
function ringIn(before: readonly (Arc | null)[]): readonly Arc[] | null {
  const seenFrom = before.map(() => -1);
  for (let start = 0; start < before.length; start += 1) {
    let node = start;
    while (seenFrom[node] === -1 && before[node]) {
      seenFrom[node] = start;
      node = before[node]?.from ?? node;
    }
    if (seenFrom[node] !== start || !before[node]) continue;
    const ring: Arc[] = [];
    for (let at = node; ; ) {
      const arc = before[at];
      if (!arc) break;
      ring.unshift(arc);
      at = arc.from;
      if (at === node) return ring;
    }
  }
  return null;
}
