import { expect, test } from "vitest";
import { bareHeading } from "../../../core/exchange/headingUnit.ts";

test.each([
  ["height_ft", "height", "ft"],
  ["Height (m)", "height", "m"],
  ["X (US survey ft)", "x", "usft"],
  ["addr:housenumber", "addrhousenumber", null],
  ["BldgID", "bldgid", null],
  ["m", "m", null],
  ["constructor toString", "constructortostring", null],
])("%s is %s with unit %s", (heading, key, unit) => {
  expect(bareHeading(heading)).toMatchObject({ key, unit });
});
