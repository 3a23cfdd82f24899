import { expect, test } from "vitest";
import { aboveGroundOfLengthM, parsePoleSize } from "../../../core/exchange/poleHeight.ts";

test.each(["45-4", "45/4", "45' class 4", "45 ft cl 4", "45 4"])("%s is a pole of 45 ft, class 4", (text) => {
  expect(parsePoleSize(text)).toEqual({ lengthM: 13.716, poleClass: "4" });
});

test("a class heavier than 1 is read", () =>
  expect(parsePoleSize("50-h2")).toEqual({ lengthM: 15.24, poleClass: "H2" }));

test.each(["45", "4-45", "10-4", "45-8-2", "2024-11", "tall"])("%s is no pole size", (text) =>
  expect(parsePoleSize(text)).toBeNull(),
);

test("a 45 ft pole stands 38 ft 6 in above ground", () => expect(aboveGroundOfLengthM(13.716)).toBe(11.7348));

test("a pole that would stand wholly in the ground has no height above it", () =>
  expect(aboveGroundOfLengthM(0.6)).toBeNull());

test("a length that is not positive is our mistake", () =>
  expect(() => aboveGroundOfLengthM(Number.NaN)).toThrow(RangeError));
