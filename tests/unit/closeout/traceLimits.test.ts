import { expect, test } from "vitest";
import {
  meanLossDb,
  placeOverLimits,
  returnLossUnderLimit,
  sectionOverLimit,
  wholeOverLimit,
} from "../../../core/closeout/traceLimits.ts";

const limits = {
  spliceMaxDb: 0.2,
  connectionMaxDb: 0.5,
  reflectanceMaxDb: -45,
  sectionMaxDbPerKm: 0.4,
  returnLossMinDb: 32,
};

test("a splice too large one way is within its limit where the other way makes up for it", () => {
  const splice = { kind: "splice", drawnDb: 0.1, reflectanceDb: null } as const;
  expect(placeOverLimits({ ...splice, lossesDb: [0.3] }, limits)).toEqual([
    { what: "loss", measured: 0.3, limit: 0.2 },
  ]);
  expect(placeOverLimits({ ...splice, lossesDb: [0.3, -0.1] }, limits)).toEqual([]);
});

test("a figure that equals its limit is not over it", () => {
  expect(placeOverLimits({ kind: "splice", drawnDb: 0.1, lossesDb: [0.2], reflectanceDb: -45 }, limits)).toEqual([]);
});

test("a connection has limits of its own, for its loss and its reflection", () => {
  const over = placeOverLimits({ kind: "connection", drawnDb: 0.5, lossesDb: [0.7], reflectanceDb: -38 }, limits);
  expect(over.map((one) => [one.what, one.limit])).toEqual([
    ["loss", 0.5],
    ["reflectance", -45],
  ]);
});

test("a tap may lose what is drawn for it and a splice more", () => {
  const tap = { kind: "tap", drawnDb: 1.2, reflectanceDb: null } as const;
  expect(placeOverLimits({ ...tap, lossesDb: [1.4] }, limits)).toEqual([]);
  expect(placeOverLimits({ ...tap, lossesDb: [1.5] }, limits)).toMatchObject([{ limit: 1.4 }]);
});

test("a section is judged by its slope, but not a short one", () => {
  expect(sectionOverLimit(0.5, 800, limits)).toEqual({ what: "section", measured: 0.5, limit: 0.4 });
  expect(sectionOverLimit(0.5, 60, limits)).toBeNull();
  expect(sectionOverLimit(0.4, 800, limits)).toBeNull();
});

test("the whole way may lose what is drawn on it and what its fiber may", () => {
  expect(wholeOverLimit(1.2, { drawnDb: 0.3, lengthM: 2000 }, limits)).toEqual({
    what: "whole",
    measured: 1.2,
    limit: 1.1,
  });
  expect(wholeOverLimit(1.1, { drawnDb: 0.3, lengthM: 2000 }, limits)).toBeNull();
  expect(wholeOverLimit(null, { drawnDb: 0.3, lengthM: 2000 }, limits)).toBeNull();
});

test("a return loss under its limit is told; 0 is what instruments write where they know none", () => {
  expect(returnLossUnderLimit(28, limits)).toEqual({ what: "returnLoss", measured: 28, limit: 32 });
  expect([32, 0, null].map((figure) => returnLossUnderLimit(figure, limits))).toEqual([null, null, null]);
});

test("the mean of no direction is refused", () => {
  expect(() => meanLossDb([])).toThrow(RangeError);
});
