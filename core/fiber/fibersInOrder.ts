import { freeByTube, type TubedCable, tubeOfFiber } from "./tubes.ts";

/** How the cable stands before a fiber is looked at. Of its tube: nobody has a fiber; some group has; and of the group at work: it
 * has one; the fiber just before is its own. */
const states = ["fresh", "open", "inGroup", "adjacent"] as const;
const fresh = 0;
const open = 1;
const inGroup = 2;
const adjacent = 3;

/**
 * Fibers for groups whose numbers rise from group to group: the least openings of a second tube, then broken runs, then tubes, then
 * fibers skipped that any such allocation has.
 *
 * A dynamic program over fiber and fibers given so far, as wide as the cable has fibers to spare: time and memory are
 * `fiberCount * (free - asked)`.
 *
 * @param counts fibers of each group, whole, 0 or more
 * @returns fibers of each group, ascending; null where the cable has too few
 * @source equal to trying every allocation, in tests/property/fiberAllocation.test.ts
 */
export function fibersInOrder(cable: TubedCable, counts: readonly number[]): readonly (readonly number[])[] | null {
  const free = freeByTube(cable).flat();
  const asked = counts.reduce((sum, count) => sum + count, 0);
  const width = free.length - asked + 1;
  if (width < 1) return null;
  if (asked === 0) return counts.map(() => []);
  const starts = startsOf(counts);
  const tubeOf = (index: number) => tubeOfFiber(free[index] ?? 0, cable.fibersPerTube);
  const heldTubes = new Set([...cable.taken].map((fiber) => tubeOfFiber(fiber, cable.fibersPerTube)));
  const stateOnEntering = (index: number) => (heldTubes.has(tubeOf(index)) ? open : fresh);
  // One opening outweighs all breaks, one break all tubes.
  const breakCost = tubeOf(free.length - 1) + 1;
  const openingCost = breakCost * (asked + 1);
  const takeCost = (state: number, given: number, follows: boolean): number => {
    if (state === fresh) return 1 + (starts.has(given) ? 0 : openingCost);
    if (starts.has(given) || (state === adjacent && follows)) return 0;
    return state === open ? openingCost : breakCost;
  };

  // With `given` of the first `index` free fibers given, index - given were passed over: a row holds every state of every such count.
  const rowSize = width * states.length;
  let row = new Float64Array(rowSize).fill(Number.POSITIVE_INFINITY);
  row[stateOnEntering(0)] = 0;
  const cameFrom = new Int8Array((free.length + 1) * rowSize);
  let best: Reached = { cost: Number.POSITIVE_INFINITY, index: 0, state: fresh };
  for (let index = 0; index < free.length; index += 1) {
    const next = new Float64Array(rowSize).fill(Number.POSITIVE_INFINITY);
    const follows = free[index] === (free[index - 1] ?? 0) + 1;
    const entering = tubeOf(index + 1) === tubeOf(index) ? null : stateOnEntering(index + 1);
    const reach = (skipped: number, state: number, cost: number, move: number) => {
      const at = skipped * states.length + (entering ?? state);
      if (skipped >= width || cost >= (next[at] ?? 0)) return;
      next[at] = cost;
      cameFrom[(index + 1) * rowSize + at] = move;
    };
    for (let skipped = Math.max(0, index - asked); skipped < width && skipped <= index; skipped += 1) {
      const given = index - skipped;
      for (let state = 0; state < states.length; state += 1) {
        const cost = row[skipped * states.length + state] ?? Number.POSITIVE_INFINITY;
        if (cost === Number.POSITIVE_INFINITY) continue;
        if (given < asked)
          reach(skipped, starts.has(given + 1) ? open : adjacent, cost + takeCost(state, given, follows), state);
        reach(skipped + 1, state === adjacent ? inGroup : state, cost, states.length + state);
      }
    }
    row = next;
    if (index + 1 >= asked) best = cheaperOf(best, row, index + 1, index + 1 - asked);
  }
  return groupsBack(
    free,
    counts,
    (index, skipped, state) => {
      const move = cameFrom[index * rowSize + skipped * states.length + state] ?? 0;
      return { taken: move < states.length, state: move % states.length };
    },
    best,
  );
}

/** A state after so many free fibers. */
type Reached = { readonly cost: number; readonly index: number; readonly state: number };

function cheaperOf(best: Reached, row: Float64Array, index: number, skipped: number): Reached {
  return states
    .map((_, state) => ({ cost: row[skipped * states.length + state] ?? Number.POSITIVE_INFINITY, index, state }))
    .reduce((least, one) => (one.cost < least.cost ? one : least), best);
}

/** How many fibers are given when a group begins; the end of the last one is among them. */
function startsOf(counts: readonly number[]): ReadonlySet<number> {
  const starts = new Set([0]);
  let given = 0;
  for (const count of counts) {
    given += count;
    starts.add(given);
  }
  return starts;
}

function groupsBack(
  free: readonly number[],
  counts: readonly number[],
  cameFrom: (index: number, skipped: number, state: number) => { readonly taken: boolean; readonly state: number },
  end: Reached,
): readonly (readonly number[])[] {
  const given: number[] = [];
  let { state } = end;
  let skipped = end.index - counts.reduce((sum, count) => sum + count, 0);
  for (let index = end.index; index > 0; index -= 1) {
    const move = cameFrom(index, skipped, state);
    if (move.taken) given.push(free[index - 1] ?? 0);
    else skipped -= 1;
    state = move.state;
  }
  given.reverse();
  let last = 0;
  return counts.map((count) => {
    last += count;
    return given.slice(last - count, last);
  });
}
