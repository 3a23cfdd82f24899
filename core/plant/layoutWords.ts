import type { LayoutEnding } from "../model/layoutRows.ts";

const endings: Readonly<Record<LayoutEnding, string>> = {
  proven: "the search came to its end.",
  rested: "the search had nothing more to try.",
  work: "the search came to its limit of steps.",
  time: "the clock ended the search: with more time, or on another machine, it may come to another layout.",
  stopped: "the search was stopped by hand; the best so far was kept.",
  moment: "only a moment was given to the search.",
};

/** What ended the search of a layout, in words that go on a sentence. */
export function endingText(ended: LayoutEnding): string {
  return endings[ended];
}
