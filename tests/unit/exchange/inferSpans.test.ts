import { expect, test } from "vitest";
import { inferSpans } from "../../../core/exchange/inferSpans.ts";
import type { SpanPole } from "../../../core/exchange/spanPole.ts";

const at = (tag: string, eastM: number, northM = 0): SpanPole => ({ tag, eastM, northM, lonLat: null });
const pairs = (made: ReturnType<typeof inferSpans>): string[] =>
  made.spans.map((span) => `${span.fromTag}-${span.toTag}`);

test("poles in a row become one line from west to east, each span marked as inferred", () => {
  const made = inferSpans([at("C", 80), at("A", 0), at("D", 121), at("B", 40)], 60);
  expect(pairs(made)).toEqual(["A-B", "B-C", "C-D"]);
  expect(made.spans.every((span) => span.origin === "inferred" && span.review !== "")).toBe(true);
  expect([...made.places]).toEqual([
    ["A", { line: "Line 1", order: 1 }],
    ["B", { line: "Line 1", order: 2 }],
    ["C", { line: "Line 1", order: 3 }],
    ["D", { line: "Line 1", order: 4 }],
  ]);
});

test("a side street becomes a line of its own that starts from the main one", () => {
  const made = inferSpans(
    [at("A", 0), at("B", 40), at("C", 80), at("D", 120), at("S1", 41, 38), at("S2", 41, 76)],
    60,
    5,
  );
  expect(pairs(made)).toEqual(["S2-S1", "S1-B", "B-C", "C-D", "B-A"]);
  expect(new Set([...made.places.values()].map((place) => place.line))).toEqual(new Set(["Line 5", "Line 6"]));
});

test("no span is longer than the longest allowed; a pole out of reach is named", () => {
  const made = inferSpans([at("A", 0), at("B", 40), at("FAR", 140)], 60);
  expect(pairs(made)).toEqual(["A-B"]);
  expect(made.alone).toEqual(["FAR"]);
});

test("a ring of poles is left open at one span", () => {
  const ring = Array.from({ length: 12 }, (_, n) =>
    at(`P${n}`, 100 * Math.cos((n * Math.PI) / 6), 100 * Math.sin((n * Math.PI) / 6)),
  );
  expect(inferSpans(ring, 60).spans.length).toBe(11);
});

test("of two poles side by side the first is joined and the other named", () => {
  const made = inferSpans([at("A", 0), at("A stub", 0.5, 1), at("B", 40)], 60);
  expect(pairs(made)).toEqual(["A-B"]);
  expect(made.beside).toEqual(["A stub"]);
});

test("two spans never leave a pole within 45 degrees of each other", () => {
  const made = inferSpans([at("A", 0), at("B", 40), at("B2", 40, 15)], 60);
  expect(pairs(made).length).toBe(2);
  expect(pairs(made)).not.toContain("A-B2");
});

test("the same poles give the same spans, and a longest span that is no number is refused", () => {
  const poles = Array.from({ length: 60 }, (_, n) => at(`P${n}`, (n * 37) % 400, (n * 91) % 300));
  expect(inferSpans(poles, 90)).toEqual(inferSpans(poles, 90));
  expect(() => inferSpans(poles, Number.NaN)).toThrow(RangeError);
});
