import type { Landmark, LandmarkKind, MatchRule, ShownEvent } from "./matchTrace.ts";

/** A pair: which event stands for which landmark; the event -1 is a near end that does not show. */
type Pair = { readonly event: number; readonly landmark: number };

/** What parts of a choice cost, in squares of standard deviations. */
export type Misfits = {
  /** Of taking an event for the near end, with what is passed over before it. */
  readonly start: (event: number) => number;
  /** Of what kind and loss differ; infinite where the one cannot be the other. */
  readonly pair: (event: number, landmark: number) => number;
  /** Of how far apart two neighbours in the choice are, and what lies unpaired between them. */
  readonly between: (before: Pair, after: Pair) => number;
  /** Of what is left over behind the last pair. */
  readonly after: (event: number, landmark: number) => number;
  /** The event the fiber ends at too early, where so many are paired; null where it does not. */
  readonly brokenAt: (event: number, landmark: number) => number | null;
  /** Landmarks behind the last pair that a break hides; all others should have shown. */
  readonly isBeyond: (landmark: number, last: Pair) => boolean;
  /** Whether an unpaired event is the instrument's own at the start of a lead. */
  readonly isOfLead: (event: number, first: number) => boolean;
  /** Whether an unpaired event is the end of a lead hung on at the far end. */
  readonly isOfTail: (event: number, last: Pair) => boolean;
};

/** A splice well made shows little: to miss it says little. */
const missingCost: Readonly<Record<LandmarkKind, number>> = { connection: 6, splice: 3, tap: 8, splitter: 8, end: 8 };
const unmatchedCost = 6;
/** With the far end that does not show it makes 16: an end farther off than four standard deviations is a break. */
const breakCost = 8;
/** Of a lead that shows: where one would do as well without, there is none. */
const leadCost = 1;
/** Of a far end that the instrument does not call one, with a tail lead behind it and without. */
const tailCost = 0.5;
const unendedCost = 3;
/** A splice that reflects is rarely one; a connection that does not may be polished at an angle. */
const splicedReflectsCost = 4;
const connectionDarkCost = 1;
const mostLossCost = 9;

/** Weighs the parts of a choice. The weights are common practice, no source: what they choose is held against planted events in tests/property. */
export function misfits(
  landmarks: readonly Landmark[],
  events: readonly ShownEvent[],
  { slackM, scaleFrac, leadM }: MatchRule,
): Misfits {
  const last = landmarks.length - 1;
  const endEvent = events.findLastIndex((one) => one.ends);
  const missedBefore = sums(landmarks.map((one) => missingCost[one.kind]));
  const missed = (from: number, to: number) => (missedBefore[to] ?? 0) - (missedBefore[from] ?? 0);
  const atM = (event: number) => events[event]?.atM ?? leadM ?? 0;
  const drawnM = (landmark: number) => landmarks[landmark]?.fiberM ?? 0;
  const showsItself = (events[0]?.atM ?? Number.POSITIVE_INFINITY) <= slackM;
  const isOfLead = (event: number, first: number) =>
    event === 0 && showsItself && (first > 0 || (first < 0 && (leadM ?? 0) > slackM));
  const passedOver = (from: number, to: number) => (to - from - 1 - (isOfLead(from + 1, from) ? 1 : 0)) * unmatchedCost;
  const isOfTail = (event: number, at: Pair) =>
    at.landmark === last && event > at.event && event === endEvent && !events[at.event]?.ends;
  const brokenAt = (event: number, landmark: number) => (landmark < last && endEvent > event ? endEvent : null);
  const isBeyond = (landmark: number, at: Pair) => {
    const broken = brokenAt(at.event, at.landmark);
    if (broken === null) return false;
    if (landmark === last) return true;
    const alongM = atM(broken) - atM(at.event);
    return drawnM(landmark) - drawnM(at.landmark) > alongM - deviationM(alongM);
  };
  const deviationM = (alongM: number) => Math.hypot(slackM, scaleFrac * alongM);

  return {
    isOfLead,
    isOfTail,
    brokenAt,
    isBeyond,
    start(event) {
      if (event < 0) return 0;
      if (events[event]?.ends) return Number.POSITIVE_INFINITY;
      const passed = event - (isOfLead(0, event) ? 1 : 0);
      const dark = events[event]?.reflects ? 0 : connectionDarkCost;
      const aboutLead =
        leadM === null ? (atM(event) > slackM ? leadCost : 0) : ((atM(event) - leadM) / deviationM(leadM)) ** 2;
      return passed * unmatchedCost + dark + aboutLead;
    },
    pair(event, landmark) {
      const [shown, drawn] = [events[event], landmarks[landmark]];
      if (!shown || !drawn) return Number.POSITIVE_INFINITY;
      if (landmark === last) return shown.ends ? 0 : endEvent > event ? tailCost : unendedCost;
      if (shown.ends) return Number.POSITIVE_INFINITY;
      return kindCost(shown, drawn) + Math.min(mostLossCost, lossCost(shown, drawn));
    },
    between(before, after) {
      const alongM = drawnM(after.landmark) - drawnM(before.landmark);
      const moreM = atM(after.event) - atM(before.event) - alongM;
      return (
        (moreM / deviationM(alongM)) ** 2 +
        passedOver(before.event, after.event) +
        missed(before.landmark + 1, after.landmark)
      );
    },
    after(event, landmark) {
      const left = passedOver(event, events.length);
      const broken = brokenAt(event, landmark);
      if (broken === null) {
        const tail = events.some((_, index) => isOfTail(index, { event, landmark })) ? 1 : 0;
        return left - tail * unmatchedCost + missed(landmark + 1, landmarks.length);
      }
      const hidden = landmarks.findIndex((_, index) => index > landmark && isBeyond(index, { event, landmark }));
      const shouldShow = missed(landmark + 1, hidden);
      return left - unmatchedCost + shouldShow + breakCost + missingCost[landmarks[last]?.kind ?? "end"];
    },
  };
}

function kindCost({ reflects }: ShownEvent, { kind }: Landmark): number {
  if (kind === "connection") return reflects ? 0 : connectionDarkCost;
  return reflects && (kind === "splice" || kind === "tap") ? splicedReflectsCost : 0;
}

/** One standard deviation of a loss: half a dB and a quarter of it. */
function lossCost(shown: ShownEvent, drawn: Landmark): number {
  return ((shown.lossDb - drawn.lossDb) / (0.5 + drawn.lossDb / 4)) ** 2;
}

/** Sums of all before each, and of all. */
function sums(figures: readonly number[]): readonly number[] {
  const all = [0];
  for (const one of figures) all.push((all.at(-1) ?? 0) + one);
  return all;
}
