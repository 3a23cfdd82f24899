import { expect, test } from "vitest";
import { measuredSpanM, type SpanPole } from "../../../core/exchange/spanPole.ts";
import { spansFromPairs } from "../../../core/exchange/spansFromPairs.ts";

const poles = new Map<string, SpanPole>([
  ["P1", { tag: "P1", eastM: 0, northM: 0, lonLat: null }],
  ["P2", { tag: "P2", eastM: 30, northM: 40, lonLat: null }],
]);
const find = (tag: string) => poles.get(tag);
const pair = { fileLine: 2, fromTag: "P1", toTag: "P2", lengthM: null, note: "" };

test("a pair without a length is measured between its poles", () => {
  expect(spansFromPairs([pair], find).spans).toMatchObject([{ lengthM: 50, origin: "surveyed", review: "" }]);
});

test("a measured length is kept, and one far from the distance is put up for review", () => {
  const spans = [50.5, 60].flatMap((lengthM) => spansFromPairs([{ ...pair, lengthM }], find).spans);
  expect(spans.map(({ lengthM, review }) => [lengthM, review !== ""])).toEqual([
    [50.5, false],
    [60, true],
  ]);
});

test("a pair that names an unknown pole is reported at its row", () => {
  expect(spansFromPairs([{ ...pair, toTag: "P7" }], find)).toMatchObject({
    spans: [],
    bad: [{ fileLine: 2, field: "toTag", value: "P7" }],
  });
});

test("between two places on the globe the ellipsoid is measured, not the grid", () => {
  const at = (lonDeg: number): SpanPole => ({ tag: "", eastM: 0, northM: 0, lonLat: [lonDeg, 0] });
  // one degree of the equator is 2 pi 6378137 m / 360
  expect(measuredSpanM(at(0), at(1))).toBe(111319.491);
});
