import type { Watch } from "./problem.ts";

/** What may end a search before it has nothing more to do. */
export type SearchLimits = {
  /** Steps it may take. They are counted, not timed: the same on every machine, and so is what they come to. */
  readonly stepLimit: number;
  /** s; with it another machine may come to another layout. Infinity for none. */
  readonly timeLimitS: number;
};

/** A watch that keeps to limits and tells afterwards what ended the search. */
export type LimitedWatch = Watch & {
  /** null where nothing did: the search came to its own end */
  readonly endedBy: () => "work" | "time" | "stopped" | null;
  /** Steps taken; a search with this as its limit comes to the same layout. */
  readonly stepCount: () => number;
};

/**
 * Watches a search by counting how often it asks whether to go on, and by a clock where one is given.
 *
 * @param elapsedS   s since the search began
 * @param isStopped  whether a person asked for an end
 */
export function limitedWatch(
  { stepLimit, timeLimitS }: SearchLimits,
  elapsedS: () => number,
  isStopped: () => boolean,
  better?: Watch["better"],
): LimitedWatch {
  let stepCount = 0;
  let endedBy: ReturnType<LimitedWatch["endedBy"]> = null;
  const whatEnds = (): typeof endedBy => {
    if (isStopped()) return "stopped";
    if (stepCount >= stepLimit) return "work";
    return elapsedS() >= timeLimitS ? "time" : null;
  };
  return {
    elapsedS,
    stopped() {
      endedBy ??= whatEnds();
      if (endedBy === null) stepCount += 1;
      return endedBy !== null;
    },
    ...(better && { better }),
    endedBy: () => endedBy,
    stepCount: () => stepCount,
  };
}
