import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { accessTimeline, orderSize } from "../../core/jointpole/accessTimeline.ts";
import { afterBusinessDays, dayNumber, dayText } from "../../core/jointpole/civilDay.ts";
import { type Source, sourceTitle } from "./source.ts";

const access: Source = {
  document:
    "47 CFR 1.1411(c), (e), (g) and its predecessor 1.1420(c), (d); make-ready times and sizes from memory; amended by FCC 25-38",
  edition: "2019 text; 2012-13 text",
  mark: "seen",
  tolerance: "the day",
};

describe(sourceTitle(access), () => {
  const daysOf = (order: "simple" | "larger") =>
    accessTimeline({ receivedIso: "2026-03-02", resubmittedIso: "2026-03-20" }, order).steps.map(
      ({ days, counted, mark }) => [days, counted, mark],
    );

  it("a simple order: 10 and 5 business days, then 45, 14, 14, and 30 or 90 days of make-ready", () => {
    expect(daysOf("simple")).toEqual([
      [10, "business", "seen"],
      [5, "business", "seen"],
      [45, "calendar", "seen"],
      [14, "calendar", "seen"],
      [14, "calendar", "seen"],
      [30, "calendar", "memory"],
      [90, "calendar", "memory"],
    ]);
  });

  it("a larger order: 60 days to the answer, 75 or 135 of make-ready", () => {
    expect(daysOf("larger").map(([days]) => days)).toEqual([10, 5, 60, 14, 14, 75, 135]);
  });

  it.each([
    [300, 60_000, "simple"],
    [301, 1_000_000, "larger"],
    [300, 59_999, "larger"],
    [3000, 60_000, "larger"],
    [3001, 1_000_000, "beyond"],
    [101, 2000, "beyond"],
  ] as const)("%s poles of an owner of %s in the state are a %s order", (poleCount, ownerPoleCount, order) => {
    expect(orderSize(poleCount, ownerPoleCount)).toBe(order);
  });
});

describe("days of the calendar", () => {
  it("follow those of the standard library, over leap years and centuries", () => {
    fc.assert(
      fc.property(fc.integer({ min: -200_000, max: 200_000 }), (days) => {
        const text = new Date(days * 86_400_000).toISOString().slice(0, 10);
        expect(dayText(days)).toBe(text);
        expect(dayNumber(text)).toBe(days);
      }),
    );
  });

  it("five business days later is the same weekday a week on, from a working day", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30_000 }), (days) => {
        const weekday = new Date(days * 86_400_000).getUTCDay();
        if (weekday >= 1 && weekday <= 5) expect(afterBusinessDays(days, 5)).toBe(days + 7);
      }),
    );
  });

  it("there is no 30 February", () => {
    expect(() => dayNumber("2026-02-30")).toThrow("no day of the calendar");
  });
});
