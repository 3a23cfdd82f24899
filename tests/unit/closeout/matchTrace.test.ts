import { expect, test } from "vitest";
import { breakPlace } from "../../../core/closeout/breakPlace.ts";
import { type Landmark, matchTrace, type ShownEvent } from "../../../core/closeout/matchTrace.ts";

const rule = { slackM: 5, scaleFrac: 0.01, leadM: null };
const sharp = { pulseWidthNs: 30, groupIndex: 1.468, spacingM: 0.6 };

/** Hub, a splice at 800 m, a splitter at 1500 m. */
const fiber: readonly Landmark[] = [
  { kind: "connection", fiberM: 0, lossDb: 0.5 },
  { kind: "splice", fiberM: 800, lossDb: 0.1 },
  { kind: "splitter", fiberM: 1500, lossDb: 10 },
];

const event = (atM: number, more: Partial<ShownEvent> = {}): ShownEvent => ({
  atM,
  lossDb: 0.1,
  reflects: false,
  ends: false,
  ...more,
});
const end = (atM: number) => event(atM, { reflects: true, ends: true });
const port = event(0, { lossDb: 0, reflects: true });

test("a trace as drawn has all its landmarks, each with how much farther it is than drawn", () => {
  const { matches, missing, unmatched, leadM } = matchTrace(fiber, [port, event(803), end(1501)], rule);
  expect(matches.map((one) => one.moreM)).toEqual([0, 3, -2]);
  expect([missing, unmatched, leadM]).toEqual([[], [], 0]);
});

test("a launch lead is found by the connection at its end, and what is behind it counts from there", () => {
  const { matches, leadM } = matchTrace(fiber, [port, event(500, { reflects: true }), event(1302), end(2001)], rule);
  expect(leadM).toBe(500);
  expect(matches.map((one) => [one.landmark.kind, one.event?.atM])).toEqual([
    ["connection", 500],
    ["splice", 1302],
    ["splitter", 2001],
  ]);
});

test("a splice that is not seen is missing, an event between poles stands for nothing", () => {
  const { missing, unmatched } = matchTrace(fiber, [port, event(400), end(1502)], rule);
  expect(missing.map((one) => one.kind)).toEqual(["splice"]);
  expect(unmatched.map((one) => one.atM)).toEqual([400]);
});

test("a coil left out shifts what follows and is told once", () => {
  const shortM = 14;
  const { matches } = matchTrace(fiber, [port, event(800 - shortM), end(1500 - shortM)], rule);
  expect(matches.map((one) => one.moreM)).toEqual([0, -shortM, 0]);
});

test("a fiber that ends early is broken there; what lies beyond is not missing", () => {
  const { broken, beyond, missing } = matchTrace(fiber, [port, end(600)], rule);
  expect(broken?.atM).toBe(600);
  expect(beyond.map((one) => one.kind)).toEqual(["splice", "splitter"]);
  expect(missing).toEqual([]);
});

test("behind a lead of known length a fiber that is not connected is broken at its near end", () => {
  const known = matchTrace(fiber, [port, end(300)], { ...rule, leadM: 300 });
  expect(breakPlace(known, rule, sharp)?.fiberM).toBeCloseTo(0, 9);
});

test("a trace without events finds nothing, and misses all but the near end", () => {
  const { matches, missing, broken } = matchTrace(fiber, [], rule);
  expect([matches.length, missing.length, broken]).toEqual([1, 2, null]);
});

test("landmarks or events out of order are refused, and a rule without tolerance", () => {
  expect(() => matchTrace(fiber.toReversed(), [], rule)).toThrow(RangeError);
  expect(() => matchTrace(fiber, [event(5), event(4)], rule)).toThrow(RangeError);
  expect(() => matchTrace(fiber.slice(0, 1), [], rule)).toThrow(RangeError);
  expect(() => matchTrace(fiber, [], { ...rule, slackM: 0 })).toThrow(RangeError);
  expect(() => matchTrace(fiber, [], { ...rule, leadM: -1 })).toThrow(RangeError);
});

test("a break counts on from the landmark last found, and its uncertainty grows with the way from there", () => {
  const near = breakPlace(matchTrace(fiber, [port, event(800), end(900)], rule), rule, sharp);
  expect(near?.fiberM).toBeCloseTo(900, 6);
  const far = breakPlace(matchTrace(fiber, [port, event(800), end(1300)], rule), rule, sharp);
  expect(far?.fromFiberM).toBe(800);
  expect(far?.plusMinusM ?? 0).toBeGreaterThan(near?.plusMinusM ?? 0);
  expect(near?.plusMinusM).toBeCloseTo(2 * Math.hypot(...Object.values(near?.parts ?? {})), 9);
});

test("a wrong group index is taken out of a break's distance by what the landmarks show", () => {
  const long: readonly Landmark[] = [
    { kind: "connection", fiberM: 0, lossDb: 0.5 },
    { kind: "splice", fiberM: 8000, lossDb: 0.1 },
    { kind: "splitter", fiberM: 15_000, lossDb: 10 },
  ];
  const scale = 1.005;
  const found = breakPlace(matchTrace(long, [port, event(8000 * scale), end(12_000 * scale)], rule), rule, sharp);
  expect(found?.fiberM).toBeCloseTo(12_000, 0);
  // a quarter percent of 4 km is 10 m: the scale found is sharper than the one expected
  expect(found?.parts.scaleM).toBeLessThan(4);
});

test("a whole fiber has no break, and sharpness without figures is refused", () => {
  const whole = matchTrace(fiber, [port, event(800), end(1500)], rule);
  expect(breakPlace(whole, rule, sharp)).toBeNull();
  expect(() => breakPlace(whole, rule, { ...sharp, spacingM: 0 })).toThrow(RangeError);
});
