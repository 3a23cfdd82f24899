import { afterBusinessDays, dayNumber, dayText } from "./civilDay.ts";

/** How far a figure of the timeline can be trusted, as everywhere in the catalogues. */
type Mark = "seen" | "memory";

type Rule = {
  readonly step: string;
  /** Days from the step before, for a simple order and a larger one. */
  readonly days: readonly [simple: number, larger: number];
  readonly counted: "business" | "calendar";
  readonly clause: string;
  readonly mark: Mark;
};

/** Document of every row. Its parts (c) and following were amended by FCC 25-38, 90 FR 41726: read them before use. */
export const accessDocument =
  "47 CFR 1.1411, pole access timeline; amended by FCC 25-38 of 2025, to be read before use";

const complete: Rule = {
  step: "the owner says whether the application is complete; silence means it is",
  days: [10, 10],
  counted: "business",
  clause: "1.1411(c)(1)(i), 2019 text",
  mark: "seen",
};
const resubmitted: Rule = {
  step: "an application sent in again counts as complete",
  days: [5, 5],
  counted: "business",
  clause: "1.1411(c)(1)(ii), 2019 text",
  mark: "seen",
};
const followers: readonly Rule[] = [
  {
    step: "survey done and the application answered",
    days: [45, 60],
    counted: "calendar",
    clause: "1.1420(c), 2012-13 text, kept in 1.1411",
    mark: "seen",
  },
  {
    step: "estimate of the make-ready",
    days: [14, 14],
    counted: "calendar",
    clause: "1.1420(d), 2012-13 text",
    mark: "seen",
  },
  {
    step: "estimate may be withdrawn from then on",
    days: [14, 14],
    counted: "calendar",
    clause: "1.1420(d), 2012-13 text",
    mark: "seen",
  },
];
const makeReady: readonly Rule[] = [
  {
    step: "make-ready in the communication space done",
    days: [30, 75],
    counted: "calendar",
    clause: "1.1411(e)(1)",
    mark: "memory",
  },
  {
    step: "make-ready above the communication space done",
    days: [90, 135],
    counted: "calendar",
    clause: "1.1411(e)(2)",
    mark: "memory",
  },
];

/** An order is simple, or larger, up to the lesser of a count of poles and a part of the owner's poles in the state; 1.1411(g), from memory. */
const sizes = [
  { order: "simple", poleCount: 300, partOfOwners: 0.005 },
  { order: "larger", poleCount: 3000, partOfOwners: 0.05 },
] as const;

/** One step of the way to a pole, with the last day it may take. */
type AccessStep = Omit<Rule, "days"> & { readonly days: number; readonly byIso: string };

/** What an application is told of its way. */
export type AccessTimeline = {
  /** beyond: more poles than the times are for; they are then agreed on. */
  readonly order: "simple" | "larger" | "beyond";
  readonly steps: readonly AccessStep[];
};

/** How large an order is by the poles it asks for and the poles the owner has in the state. */
export function orderSize(poleCount: number, ownerPoleCount: number): AccessTimeline["order"] {
  const fits = sizes.find((one) => poleCount <= Math.min(one.poleCount, one.partOfOwners * ownerPoleCount));
  return fits?.order ?? "beyond";
}

/**
 * The last day of every step from an application to an attached strand, were each to take all its time and the estimate accepted on its
 * last day. Times of a larger order are told for one beyond it.
 *
 * @throws RangeError when a date is no day of the calendar
 */
export function accessTimeline(
  dates: { readonly receivedIso: string; readonly resubmittedIso?: string | undefined },
  order: AccessTimeline["order"],
): AccessTimeline {
  const larger = order === "simple" ? 0 : 1;
  const steps: AccessStep[] = [];
  const put = ({ days, ...rule }: Rule, from: number): number => {
    const count = days[larger];
    const by = rule.counted === "business" ? afterBusinessDays(from, count) : from + count;
    steps.push({ ...rule, days: count, byIso: dayText(by) });
    return by;
  };
  let at = put(complete, dayNumber(dates.receivedIso));
  if (dates.resubmittedIso !== undefined) at = put(resubmitted, dayNumber(dates.resubmittedIso));
  for (const rule of followers) at = put(rule, at);
  for (const rule of makeReady) put(rule, at);
  return { order, steps };
}
