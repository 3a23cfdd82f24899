import type { Watch } from "../../core/placement/problem.ts";
import { gapWords } from "../../core/placement/words.ts";
import type { Progress } from "./jobs.ts";

/** Seconds a search for a cheaper layout may take; an ordinary route is proven in one. */
const limitS = 20;

/** Watches a placement by this machine's clock, and tells how near to its bound it is each time that changes. */
export function placementWatch(onProgress: (progress: Progress) => void): Watch {
  const startMs = performance.now();
  const elapsedS = () => (performance.now() - startMs) / 1000;
  let told = "";
  return {
    elapsedS,
    stopped: () => elapsedS() >= limitS,
    better({ cost, bound }) {
      const words = `Placing terminals: ${gapWords(cost, bound)}`;
      if (words === told) return;
      told = words;
      onProgress({ doneCount: Math.min(limitS, elapsedS()), totalCount: limitS, words });
    },
  };
}
