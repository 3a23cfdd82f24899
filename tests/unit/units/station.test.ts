import { expect, test } from "vitest";
import { formatStation, parseStationM } from "../../../core/units/station.ts";

test("a station counts hundreds of feet, or kilometres, before the plus", () => {
  expect([0, 30.48, 376.1232].map((one) => formatStation(one, "us"))).toEqual(["0+00", "1+00", "12+34"]);
  expect([0, 45, 12_345.4].map((one) => formatStation(one, "metric"))).toEqual(["0+000", "0+045", "12+345"]);
});

test("half a foot short of a full station is that station", () => {
  expect(formatStation(99.6 * 0.3048, "us")).toBe("1+00");
});

test("a station is read as it is printed, and other words are none", () => {
  expect(parseStationM(" 12+34 ", "us")).toBeCloseTo(376.1232, 9);
  expect(parseStationM("12+345.5", "metric")).toBe(12_345.5);
  expect(["P-12", "12", "+3", "12+"].map((one) => parseStationM(one, "us"))).toEqual([null, null, null, null]);
});

test("there is no station before the beginning of the line", () => {
  expect(() => formatStation(-1, "us")).toThrow(RangeError);
  expect(() => formatStation(Number.NaN, "us")).toThrow(RangeError);
});
