import fc from "fast-check";
import { expect, test } from "vitest";
import { type Landmark, matchTrace, type ShownEvent } from "../../core/closeout/matchTrace.ts";
import { misfits } from "../../core/closeout/traceMisfit.ts";

const rule = { slackM: 6, scaleFrac: 0.01, leadM: null };

const middleKinds = fc.constantFrom("connection" as const, "splice" as const, "tap" as const);
const lossOf = { connection: 0.4, splice: 0.1, tap: 3, splitter: 10, end: 0 };

/** A fiber with landmarks at least `leastM` apart. */
const fiber = (leastM: number, mostMiddle: number): fc.Arbitrary<readonly Landmark[]> =>
  fc
    .record({
      middle: fc.array(fc.record({ kind: middleKinds, stepM: fc.integer({ min: leastM, max: 2000 }) }), {
        maxLength: mostMiddle,
      }),
      lastM: fc.integer({ min: leastM, max: 2000 }),
      last: fc.constantFrom("splitter" as const, "end" as const),
    })
    .map(({ middle, lastM, last }) => {
      let fiberM = 0;
      const marks = [...middle, { kind: last, stepM: lastM }].map(({ kind, stepM }) => {
        fiberM += stepM;
        return { kind, fiberM, lossDb: lossOf[kind] };
      });
      return [{ kind: "connection" as const, fiberM: 0, lossDb: 0.5 }, ...marks];
    });

const anyEvent: fc.Arbitrary<ShownEvent> = fc.record({
  atM: fc.integer({ min: 0, max: 4000 }),
  lossDb: fc.double({ min: -0.2, max: 4, noNaN: true }),
  reflects: fc.boolean(),
  ends: fc.constant(false),
});

/** Events of any kind; the last may end the fiber. */
const anyEvents = fc.tuple(fc.array(anyEvent, { maxLength: 5 }), fc.boolean()).map(([events, ends]) => {
  const inOrder = [...events].sort((a, b) => a.atM - b.atM);
  return inOrder.map((one, index) => ({ ...one, ends: ends && index === inOrder.length - 1 }));
});

/** Every choice of pairs in order, each with its cost. */
function costsOfAll(landmarks: readonly Landmark[], events: readonly ShownEvent[], leadM: number | null): number[] {
  const costs = misfits(landmarks, events, { ...rule, leadM });
  const found: number[] = [];
  const goOn = (event: number, landmark: number, cost: number) => {
    found.push(cost + costs.after(event, landmark));
    for (let next = event + 1; next < events.length; next += 1)
      for (let mark = landmark + 1; mark < landmarks.length; mark += 1) {
        const step = costs.between({ event, landmark }, { event: next, landmark: mark }) + costs.pair(next, mark);
        goOn(next, mark, cost + step);
      }
  };
  for (let event = -1; event < events.length; event += 1) goOn(event, 0, costs.start(event));
  return found;
}

test("no other choice of pairs costs less", () => {
  fc.assert(
    fc.property(fiber(20, 3), anyEvents, fc.constantFrom(null, 0, 300), (landmarks, events, leadM) => {
      const { cost } = matchTrace(landmarks, events, { ...rule, leadM });
      expect(cost).toBeCloseTo(Math.min(...costsOfAll(landmarks, events, leadM)), 9);
    }),
    { numRuns: 1000, seed: 51 },
  );
});

test("pairs are in order, and every landmark and event is told once", () => {
  fc.assert(
    fc.property(fiber(20, 3), anyEvents, fc.constantFrom(null, 0, 300), (landmarks, events, leadM) => {
      const { matches, missing, unmatched, broken, beyond } = matchTrace(landmarks, events, { ...rule, leadM });
      const marks = matches.map((one) => landmarks.indexOf(one.landmark));
      const shown = matches.flatMap((one) => (one.event ? [events.indexOf(one.event)] : []));
      expect(marks).toEqual([...new Set(marks)].sort((a, b) => a - b));
      expect(shown).toEqual([...new Set(shown)].sort((a, b) => a - b));
      expect([...marks, ...[...missing, ...beyond].map((one) => landmarks.indexOf(one))].sort((a, b) => a - b)).toEqual(
        landmarks.map((_, index) => index),
      );
      const told = [
        ...shown,
        ...unmatched.map((one) => events.indexOf(one)),
        ...(broken ? [events.indexOf(broken)] : []),
      ];
      expect(new Set(told).size).toBe(told.length);
      // left untold: the instrument at the start of a lead, and the end of a tail
      expect(events.length - told.length).toBeLessThanOrEqual(2);
    }),
    { numRuns: 1000, seed: 52 },
  );
});

/** What was done to a fiber before its trace was taken. */
const taken = fc.record({
  leadM: fc.constantFrom(0, 0, 150, 500, 1000),
  tailM: fc.constantFrom(0, 0, 500),
  /** Group index of the instrument against the true one, and excess of fiber over sheath against the drawn one. */
  scale: fc.double({ min: 0.995, max: 1.005, noNaN: true }),
  noiseM: fc.infiniteStream(fc.double({ min: -4, max: 4, noNaN: true })),
  hidden: fc.infiniteStream(fc.constantFrom(false, false, false, true)),
});

type Planted = { readonly event: ShownEvent; readonly landmark: Landmark | null };

/** The events of a trace of a fiber as it is built, with the landmark each stands for; well-made splices may not show. */
function shoot(landmarks: readonly Landmark[], how: typeof taken extends fc.Arbitrary<infer T> ? T : never): Planted[] {
  const { leadM, tailM, scale, noiseM, hidden } = how;
  const far = landmarks.at(-1);
  const noise = () => Number(noiseM.next().value);
  const planted: Planted[] = [];
  const show = (atM: number, landmark: Landmark | null, more: Partial<ShownEvent>) =>
    planted.push({ landmark, event: { atM, lossDb: landmark?.lossDb ?? 0, reflects: false, ends: false, ...more } });
  if (leadM > 0) show(0, null, { reflects: true });
  for (const landmark of landmarks) {
    const isHidden = hidden.next().value === true && landmark.kind === "splice";
    if (isHidden) continue;
    const isNear = landmark.fiberM === 0;
    const ends = landmark === far && tailM === 0;
    const atM = isNear ? leadM : (leadM + landmark.fiberM) * scale + noise();
    show(atM, landmark, { reflects: landmark.kind === "connection" || ends, ends });
  }
  if (tailM > 0) show(((far?.fiberM ?? 0) + leadM + tailM) * scale, null, { reflects: true, ends: true });
  return planted;
}

test("what was planted is found: behind a lead, before a tail, with a wrong index, noise, and splices that do not show", () => {
  fc.assert(
    fc.property(fiber(60, 5), taken, (landmarks, how) => {
      const planted = shoot(landmarks, how);
      const { matches, missing, unmatched, broken, leadM } = matchTrace(
        landmarks,
        planted.map((one) => one.event),
        rule,
      );
      expect(matches.map((one) => [one.landmark, one.event])).toEqual(
        planted.flatMap((one) => (one.landmark ? [[one.landmark, one.event]] : [])),
      );
      expect(missing).toEqual(landmarks.filter((one) => !planted.some((each) => each.landmark === one)));
      expect([unmatched, broken, leadM]).toEqual([[], null, how.leadM]);
    }),
    { numRuns: 1000, seed: 53 },
  );
});

test("where the fiber is broken, what lies before the break is found, and what lies beyond is not told as missing", () => {
  fc.assert(
    fc.property(fiber(60, 5), taken, fc.double({ min: 0, max: 1, noNaN: true }), (landmarks, how, share) => {
      const planted = shoot(landmarks, { ...how, tailM: 0 });
      const cut = Math.floor(share * (planted.length - 1));
      const [before, behind] = [planted[cut], planted[cut + 1]];
      if (!before?.landmark || !behind) return;
      const gapM = behind.event.atM - before.event.atM;
      const breakM = before.event.atM + gapM / 2;
      // nearer to a landmark than its tolerance, a break can be taken for it
      fc.pre(gapM / 2 > 6 * Math.hypot(rule.slackM, (rule.scaleFrac * gapM) / 2));
      const end = { atM: breakM, lossDb: 20, reflects: false, ends: true };
      const shown = planted.slice(0, cut + 1);
      const events = [...shown.map((one) => one.event), end];
      const { matches, broken, missing, beyond } = matchTrace(landmarks, events, { ...rule, leadM: how.leadM });
      expect(broken).toEqual(end);
      expect(matches.map((one) => one.landmark)).toEqual(shown.flatMap((one) => one.landmark ?? []));
      expect(beyond.every((one) => one.fiberM + how.leadM > breakM * 0.99 - 20)).toBe(true);
      expect(missing.every((one) => one.kind === "splice")).toBe(true);
    }),
    { numRuns: 1000, seed: 54 },
  );
});
