import { expect, test } from "vitest";
import {
  lossOverLimit,
  meanLossDb,
  reflectanceOverLimit,
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
  const splice = { kind: "splice", drawnDb: 0.1 } as const;
  expect(lossOverLimit({ ...splice, lossesDb: [0.3] }, limits)).toEqual({ measured: 0.3, limit: 0.2 });
  expect(lossOverLimit({ ...splice, lossesDb: [0.3, -0.1] }, limits)).toBeNull();
});

test("a figure that equals its limit is not over it", () => {
  expect(lossOverLimit({ kind: "splice", drawnDb: 0.1, lossesDb: [0.2] }, limits)).toBeNull();
  expect(reflectanceOverLimit(-45, limits)).toBeNull();
});

test("a connection has limits of its own, for its loss and its reflection", () => {
  expect(lossOverLimit({ kind: "connection", drawnDb: 0.5, lossesDb: [0.7] }, limits)).toMatchObject({ limit: 0.5 });
  expect(reflectanceOverLimit(-38, limits)).toEqual({ measured: -38, limit: -45 });
  expect(reflectanceOverLimit(null, limits)).toBeNull();
});

test("a tap may lose what is drawn for it and a splice more", () => {
  const tap = { kind: "tap", drawnDb: 1.2 } as const;
  expect(lossOverLimit({ ...tap, lossesDb: [1.4] }, limits)).toBeNull();
  expect(lossOverLimit({ ...tap, lossesDb: [1.5] }, limits)).toMatchObject({ limit: 1.4 });
});

test("a section is judged by its slope, but not a short one", () => {
  expect(sectionOverLimit(0.5, 800, limits)).toEqual({ measured: 0.5, limit: 0.4 });
  expect(sectionOverLimit(0.5, 60, limits)).toBeNull();
  expect(sectionOverLimit(0.4, 800, limits)).toBeNull();
});

test("the whole way may lose what is drawn on it and what its fiber may", () => {
  expect(wholeOverLimit(1.2, { drawnDb: 0.3, lengthM: 2000 }, limits)).toEqual({
    measured: 1.2,
    limit: 1.1,
  });
  expect(wholeOverLimit(1.1, { drawnDb: 0.3, lengthM: 2000 }, limits)).toBeNull();
  expect(wholeOverLimit(null, { drawnDb: 0.3, lengthM: 2000 }, limits)).toBeNull();
});

test("a return loss under its limit is told; 0 is what instruments write where they know none", () => {
  expect(returnLossUnderLimit(28, limits)).toEqual({ measured: 28, limit: 32 });
  expect([32, 0, null].map((figure) => returnLossUnderLimit(figure, limits))).toEqual([null, null, null]);
});

test("the mean of no direction is refused", () => {
  expect(() => meanLossDb([])).toThrow(RangeError);
});
