import { freeByTube, type TubedCable, tubeOfFiber } from "./tubes.ts";

/** Fibers of one cable handed out in order. */
export type FiberTaker = {
  /**
   * The next fibers for one opening: the open tube's where it has enough, else a fresh tube's, else an earlier tube's gap,
   * else whatever is left of several.
   *
   * @returns ascending numbers from 1, or null where the cable has not enough
   */
  readonly take: (fiberCount: number) => readonly number[] | null;
  /** Fibers that can still be taken. */
  readonly leftCount: () => number;
};

/** Fibers by next fit: the fewest tubes when nothing is skipped but the rest of a tube. */
export function openFiberTaker(cable: TubedCable): FiberTaker {
  const { fibersPerTube, spareCount } = cable;
  const tubes = freeByTube(cable);
  let open = 0;
  const leftCount = () => tubes.reduce((sum, tube) => sum + tube.length, 0);
  const split = (from: number, count: number): number[] => {
    const fibers: number[] = [];
    for (const tube of tubes.slice(from)) fibers.push(...tube.splice(0, count - fibers.length));
    return fibers;
  };

  return {
    leftCount,
    take(count) {
      if (leftCount() < count) return null;
      const next = tubes.findIndex((tube, index) => index >= open && tube.length >= count);
      if (next !== -1) {
        open = next;
        return tubes[next]?.splice(0, count) ?? null;
      }
      const earlier = tubes.find((tube) => tube.length >= count);
      if (earlier) return earlier.splice(0, count);
      const fresh = tubes.findIndex((tube, index) => index >= open && tube.length >= fibersPerTube - spareCount);
      const enough = fresh !== -1 && tubes.slice(fresh).reduce((sum, tube) => sum + tube.length, 0) >= count;
      const fibers = split(enough ? fresh : 0, count);
      open = Math.max(open, tubeOfFiber(Math.max(...fibers), fibersPerTube) - 1);
      return fibers;
    },
  };
}
