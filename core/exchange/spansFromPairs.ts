import type { SpanPairRow } from "./readSpanPairs.ts";
import { measuredSpanM, type NewSpan, type SpanPole } from "./spanPole.ts";
import type { SpanProblem } from "./spansFromOrder.ts";

const noticedFrac = 0.05;

/**
 * Spans given as pairs of tags. A length the file gives is kept as surveyed; one that differs by more than 5 % from the distance
 * between its poles is put up for review.
 *
 * @param find a pole of the route by tag
 */
export function spansFromPairs(
  pairs: readonly SpanPairRow[],
  find: (tag: string) => SpanPole | undefined,
): { readonly spans: readonly NewSpan[]; readonly bad: readonly SpanProblem[] } {
  const spans: NewSpan[] = [];
  const bad: SpanProblem[] = [];
  for (const pair of pairs) {
    const from = find(pair.fromTag);
    const to = find(pair.toTag);
    if (from && to) spans.push(pairedSpan(pair, from, to));
    if (!from) bad.push(unknownPole(pair.fileLine, "fromTag", pair.fromTag));
    if (!to) bad.push(unknownPole(pair.fileLine, "toTag", pair.toTag));
  }
  return { spans, bad };
}

function pairedSpan(pair: SpanPairRow, from: SpanPole, to: SpanPole): NewSpan {
  const betweenM = measuredSpanM(from, to);
  const lengthM = pair.lengthM === null ? betweenM : Math.round(pair.lengthM * 1000) / 1000;
  const isOff = Math.abs(lengthM - betweenM) > noticedFrac * lengthM;
  const review = isOff ? "The length in the file differs by more than 5 % from the distance between the poles." : "";
  return { fromTag: from.tag, toTag: to.tag, lengthM, origin: "surveyed", note: pair.note, review };
}

function unknownPole(fileLine: number, field: string, tag: string): SpanProblem {
  return {
    fileLine,
    field,
    value: tag,
    what: "There is no pole with this tag in the route.",
    accepted: "the tag of a pole already imported",
  };
}
