import { type Misfits, misfits } from "./traceMisfit.ts";

/** Kinds of places along a fiber that a reflectometer may show. */
export type LandmarkKind = "connection" | "splice" | "tap" | "splitter" | "end";

/** A place along a fiber where its trace is expected to show something. */
export type Landmark = {
  readonly kind: LandmarkKind;
  /** Fiber from the end the light is sent in at, m. */
  readonly fiberM: number;
  /** Loss drawn for it, dB. */
  readonly lossDb: number;
};

/** What a reflectometer shows at one place. */
export type ShownEvent = {
  /** From the instrument, by the group index of its file, m. */
  readonly atM: number;
  readonly lossDb: number;
  readonly reflects: boolean;
  /** Where the instrument says that the fiber ends. */
  readonly ends: boolean;
};

/** How far what was built may lie from what was drawn and still be taken for it. */
export type MatchRule = {
  /** One standard deviation of a distance between two neighbours that does not grow with it: coils and openings not as drawn, pulse, m. */
  readonly slackM: number;
  /** And of the share it grows by: group index, excess of fiber over sheath. */
  readonly scaleFrac: number;
  /** Length of the launch lead, m, 0 for none; null where nobody told it and the trace must. */
  readonly leadM: number | null;
};

/** An event and the landmark it is taken for. */
type Match<L extends Landmark, E extends ShownEvent = ShownEvent> = {
  readonly landmark: L;
  /** Null for a near end that does not show. */
  readonly event: E | null;
  /** Further than drawn from the match before it, m; 0 for the first. */
  readonly moreM: number;
};

export type TraceMatch<L extends Landmark, E extends ShownEvent = ShownEvent> = {
  /** Where the near end of the fiber is on the trace, m: behind the launch lead; 0 without one. */
  readonly leadM: number;
  /** From the near end, the near end itself first. */
  readonly matches: readonly Match<L, E>[];
  /** Landmarks that should show and do not; none of them lies beyond a break. */
  readonly missing: readonly L[];
  /** Events that stand for nothing drawn: neither of the leads nor the end at a break. */
  readonly unmatched: readonly E[];
  /** The event the fiber ends at before its drawn end; null where it does not. */
  readonly broken: E | null;
  /** Landmarks beyond a break. */
  readonly beyond: readonly L[];
  /** What the choice costs, in squares of standard deviations. */
  readonly cost: number;
};

type Step = { readonly event: number; readonly landmark: number; readonly cost: number; readonly before: Step | null };

/**
 * Takes the events of a trace for the landmarks drawn along its fiber, in order.
 *
 * Chosen is what is least unlikely: each pair costs the square of how far it lies from its drawn distance to the pair before it, in
 * standard deviations, and what its kind and loss differ; a landmark that does not show and an event that stands for nothing cost a fixed
 * amount each. Distances are held against the pair before and not against the near end, so that a coil left out shifts what follows and
 * puts one section off alone. The near end is where the lead ends, or the instrument itself. A lead as
 * long as the fiber cannot be told from it: then its length must be given.
 *
 * @param landmarks  by distance, the near end first, the far end last; two or more
 * @param events     by distance
 * @throws RangeError when they are not in order, fewer than two landmarks are given, or a figure of the rule is out of its range
 * @source least cost in order by dynamic programming; equal to trying every choice, in tests/property/matchTrace.test.ts
 */
export function matchTrace<L extends Landmark, E extends ShownEvent>(
  landmarks: readonly L[],
  events: readonly E[],
  rule: MatchRule,
): TraceMatch<L, E> {
  requireSound(landmarks, events, rule);
  const costs = misfits(landmarks, events, rule);
  let best: Step | null = null;
  let leastCost = Number.POSITIVE_INFINITY;
  for (const chain of chains(costs, landmarks.length, events.length)) {
    const cost = chain.cost + costs.after(chain.event, chain.landmark);
    if (cost >= leastCost) continue;
    [best, leastCost] = [chain, cost];
  }
  if (!best) throw new Error("no way to begin a trace");
  return told(landmarks, events, { costs, best, cost: leastCost, leadM: rule.leadM });
}

/** The best way to every pair, and to the near end alone. */
function chains(costs: Misfits, landmarkCount: number, eventCount: number): readonly Step[] {
  const found: Step[] = [];
  for (let event = -1; event < eventCount; event += 1) {
    found.push({ event, landmark: 0, cost: costs.start(event), before: null });
    if (event < 0) continue;
    const earlier = found.filter((one) => one.event < event);
    for (let landmark = 1; landmark < landmarkCount; landmark += 1) {
      const pair = costs.pair(event, landmark);
      let best: Step | null = null;
      for (const before of earlier) {
        if (before.landmark >= landmark) continue;
        const cost = before.cost + costs.between(before, { event, landmark }) + pair;
        if (cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = { event, landmark, cost, before };
      }
      if (best) found.push(best);
    }
  }
  return found;
}

type Chosen = {
  readonly costs: Misfits;
  readonly best: Step;
  readonly cost: number;
  readonly leadM: number | null;
};

function told<L extends Landmark, E extends ShownEvent>(
  landmarks: readonly L[],
  events: readonly E[],
  { costs, best, cost, leadM }: Chosen,
): TraceMatch<L, E> {
  const steps: Step[] = [];
  for (let step: Step | null = best; step; step = step.before) steps.unshift(step);
  const atM = (event: number) => events[event]?.atM ?? leadM ?? 0;
  const matches = steps.flatMap((step, index) => {
    const landmark = landmarks[step.landmark];
    const before = steps[index - 1];
    if (!landmark) return [];
    const drawnM = landmark.fiberM - (landmarks[before?.landmark ?? step.landmark]?.fiberM ?? 0);
    const shownM = atM(step.event) - atM(before?.event ?? step.event);
    return [{ landmark, event: events[step.event] ?? null, moreM: shownM - drawnM }];
  });
  const taken = new Set(steps.map((step) => step.event));
  const seen = new Set(steps.map((step) => step.landmark));
  const first = steps[0]?.event ?? -1;
  const broken = costs.brokenAt(best.event, best.landmark);
  const isHidden = (index: number) => index > best.landmark && costs.isBeyond(index, best);
  const isSpare = (_: E, index: number) =>
    !taken.has(index) && index !== broken && !costs.isOfLead(index, first) && !costs.isOfTail(index, best);
  return {
    leadM: atM(first),
    matches,
    missing: landmarks.filter((_, index) => !seen.has(index) && !isHidden(index)),
    unmatched: events.filter(isSpare),
    broken: broken === null ? null : (events[broken] ?? null),
    beyond: landmarks.filter((_, index) => isHidden(index)),
    cost,
  };
}

function requireSound(
  landmarks: readonly Landmark[],
  events: readonly ShownEvent[],
  { slackM, scaleFrac, leadM }: MatchRule,
): void {
  if (!(slackM > 0) || !(scaleFrac > 0)) throw new RangeError("slackM and scaleFrac must be over 0");
  if (leadM !== null && !(leadM >= 0)) throw new RangeError(`leadM must be 0 or more, not ${leadM}`);
  if (landmarks.length < 2) throw new RangeError("a fiber has two ends: give two landmarks or more");
  if (!rises(landmarks.map((one) => one.fiberM))) throw new RangeError("the landmarks must be told by distance");
  if (!rises(events.map((one) => one.atM))) throw new RangeError("the events must be told by distance");
}

function rises(distancesM: readonly number[]): boolean {
  return distancesM.every((one, index) => one >= (distancesM[index - 1] ?? 0));
}
