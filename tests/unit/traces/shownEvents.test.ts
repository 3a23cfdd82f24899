import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { matchTrace } from "../../../core/closeout/matchTrace.ts";
import { readTrace } from "../../../core/traces/readTrace.ts";
import { shownEvents } from "../../../core/traces/shownEvents.ts";
import type { TraceEvent } from "../../../core/traces/trace.ts";

const event = (distanceM: number, code: string, reflectanceDb: number | null = null): TraceEvent => ({
  number: 1,
  timeS: 0,
  distanceM,
  spliceLossDb: 0,
  reflectanceDb,
  slopeDbPerKm: 0,
  code,
  comment: "",
});

test("the last event ends the fiber, marked or not, unless it is out of range", () => {
  const ends = (code: string) =>
    shownEvents({ events: [event(900, code), event(0, "1F9999LS")] }).map((one) => one.ends);
  expect(ends("1E9999LS")).toEqual([false, true]);
  expect(ends("0F9999LS")).toEqual([false, true]);
  expect(ends("0O9999LS")).toEqual([false, false]);
});

test("an instrument's own start is no end", () => {
  expect(shownEvents({ events: [event(0, "1F9999LS")] })[0]?.ends).toBe(false);
});

test("1 and 2 reflect; a reflection of 0 dB is one that nobody measured", () => {
  const [a, b, c] = shownEvents({ events: [event(1, "0F9999LS", -50), event(2, "1F9999LS", 0), event(3, "2F9999LS")] });
  expect([a?.reflects, b?.reflects, c?.reflects]).toEqual([false, true, true]);
  expect([a?.reflectanceDb, b?.reflectanceDb]).toEqual([-50, null]);
});

test("a real trace behind a lead of 1 km and before a tail of 1 km is matched to the fiber between", () => {
  const read = readTrace(readFileSync(new URL("../../fixtures/traces/trace-3.sor", import.meta.url)));
  if (!read.ok) throw new Error(read.fault.what);
  const fiber = [
    { kind: "connection", fiberM: 0, lossDb: 0.5 },
    { kind: "splice", fiberM: 148, lossDb: 0.15 },
    { kind: "connection", fiberM: 290, lossDb: 0.5 },
  ] as const;
  const { leadM, matches, broken } = matchTrace(fiber, shownEvents(read.value), {
    slackM: 5,
    scaleFrac: 0.01,
    leadM: null,
  });
  expect(leadM).toBeCloseTo(1016, 0);
  expect(matches.map((one) => Math.round(one.event?.atM ?? 0))).toEqual([1016, 1162, 1311]);
  expect(broken).toBeNull();
});
