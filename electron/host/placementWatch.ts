import { type LimitedWatch, limitedWatch, type SearchLimits } from "../../core/placement/limitedWatch.ts";
import { gapText } from "../../core/units/gapText.ts";
import { moneyText } from "../../core/units/moneyText.ts";
import type { Progress } from "./drawingProgress.ts";

/** Steps a search may take where nobody asks for others: half a minute of an ordinary machine; an ordinary route is proven in a second. */
const usualStepLimit = 40_000;
/** The clock ends only what would go on for far longer. */
const usualTimeLimitS = 120;

/** Limits a person may ask for. */
export type LimitWishes = Partial<SearchLimits>;

/** Watches a placement within its limits by this machine's clock, and tells cost, bound and gap each time they change. */
export function placementWatch(
  wishes: LimitWishes,
  isStopped: () => boolean,
  onProgress: (progress: Progress) => void,
): LimitedWatch {
  const startMs = performance.now();
  const elapsedS = () => (performance.now() - startMs) / 1000;
  // a person who names steps wants them all; one who names seconds wants those
  const stepLimit = wishes.stepLimit ?? (wishes.timeLimitS === undefined ? usualStepLimit : Number.POSITIVE_INFINITY);
  const timeLimitS = wishes.timeLimitS ?? (wishes.stepLimit === undefined ? usualTimeLimitS : Number.POSITIVE_INFINITY);
  let told = "";
  const watch = limitedWatch({ stepLimit, timeLimitS }, elapsedS, isStopped, ({ cost, bound }) => {
    const proven = bound > 0 ? `, bound ${moneyText(bound)}` : "";
    const words = `cost ${moneyText(cost)}${proven}: ${gapText(cost, bound)}`;
    if (words === told) return;
    told = words;
    const part = Math.max(watch.stepCount() / stepLimit, elapsedS() / timeLimitS);
    onProgress({ doneCount: Math.min(1, part), totalCount: 1, words });
  });
  return watch;
}
