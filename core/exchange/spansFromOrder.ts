import { measuredSpanM, type NewSpan, type SpanPole } from "./spanPole.ts";

/** A pole with its place along a line; order 0 stands for none. */
export type OrderedPole = SpanPole & {
  readonly line: string;
  readonly order: number;
  /** Tag of the pole its line starts from, or simply of the one before it; empty where none is named. */
  readonly fromTag: string;
  readonly fileLine: number;
};

/** Why a row could give no span. */
export type SpanProblem = {
  readonly fileLine: number;
  readonly field: string;
  readonly value: string;
  readonly what: string;
  readonly accepted: string;
};

/**
 * Spans between neighbours in order along each line; a pole that names the pole it comes from is joined to that one.
 *
 * A step in the order larger than the line's usual one is put up for review, since a pole may be missing there.
 *
 * @param find a pole by tag, in the file or in the route
 */
export function spansFromOrder(
  poles: readonly OrderedPole[],
  find: (tag: string) => SpanPole | undefined,
): { readonly spans: readonly NewSpan[]; readonly bad: readonly SpanProblem[] } {
  const spans: NewSpan[] = [];
  const bad: SpanProblem[] = [];
  const ordered = poles.filter((pole) => pole.order > 0);
  const before = new Map<string, OrderedPole>();
  for (const name of new Set(ordered.map((pole) => pole.line))) {
    const line = ordered.filter((pole) => pole.line === name).sort((a, b) => a.order - b.order);
    const steps = line.slice(1).map((pole, index) => pole.order - (line[index]?.order ?? 0));
    const usualStep = Math.min(...steps.filter((step) => step > 0));
    for (const [index, pole] of line.entries()) {
      const last = line[index - 1];
      if (!last) continue;
      before.set(pole.tag, last);
      if (last.order === pole.order) bad.push(repeated(pole, last));
      else spans.push(orderedSpan(last, pole, gap(pole.order - last.order, usualStep, last, pole)));
    }
  }
  for (const pole of poles) {
    if (pole.fromTag === "" || pole.fromTag === pole.tag || before.get(pole.tag)?.tag === pole.fromTag) continue;
    const start = find(pole.fromTag);
    if (start) spans.push(orderedSpan(start, pole, ""));
    else bad.push(unknownStart(pole));
  }
  return { spans, bad };
}

function orderedSpan(from: SpanPole, to: SpanPole, review: string): NewSpan {
  return { fromTag: from.tag, toTag: to.tag, lengthM: measuredSpanM(from, to), origin: "ordered", note: "", review };
}

function gap(step: number, usualStep: number, before: OrderedPole, pole: OrderedPole): string {
  return step > usualStep ? `The order goes from ${before.order} to ${pole.order}: a pole between may be missing.` : "";
}

function repeated(pole: OrderedPole, before: OrderedPole): SpanProblem {
  const line = pole.line === "" ? "its line" : `line ${pole.line}`;
  const what = `${pole.tag} and ${before.tag} have the same order on ${line}.`;
  return {
    fileLine: pole.fileLine,
    field: "order",
    value: String(pole.order),
    what,
    accepted: "each order once along a line",
  };
}

function unknownStart(pole: OrderedPole): SpanProblem {
  const what = "The pole it comes from is neither in the file nor in the route.";
  return { fileLine: pole.fileLine, field: "fromTag", value: pole.fromTag, what, accepted: "the tag of a pole" };
}
