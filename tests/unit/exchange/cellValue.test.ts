import { describe, expect, test } from "vitest";
import {
  readAttachmentKind,
  readLengthM,
  readNumber,
  readSurface,
  readUnitKind,
  readVolts,
  readYesNo,
} from "../../../core/exchange/cellValue.ts";

describe("cells", () => {
  test.each([
    ["42.37", 42.37],
    [" -71,08 ", -71.08],
    ["1e-7", 1e-7],
    ["\u22125", -5],
  ])("%s is a number", (text, value) => expect(readNumber(text)).toEqual({ ok: true, value }));

  test.each(["1,234", "12,34,5", "", "five", "NaN", "1e999"])("%s is refused as a number", (text) => {
    expect(readNumber(text)).toMatchObject({ ok: false });
  });

  test.each([
    ["45", "ft", 13.716],
    ["45", "m", 45],
    ["45 ft", "m", 13.716],
    ["10 ft 6 in", "m", 3.2004],
    ["13.7 m", "ft", 13.7],
  ] as const)("%s in a column of %s is %f m", (text, unit, valueM) => {
    expect(readLengthM(text, unit)).toEqual({ ok: true, value: valueM });
  });

  test("a million survey feet are 0.6096 m longer than a million feet", () => {
    const survey = readLengthM("1000000", "usft");
    expect(survey).toEqual({ ok: true, value: 304800.6096 });
  });

  test("kilovolts are told from volts by the cell or by the column", () => {
    expect([readVolts("7.2 kV", false), readVolts("7.2", true), readVolts("120 V", true)]).toEqual([
      { ok: true, value: 7200 },
      { ok: true, value: 7200 },
      { ok: true, value: 120 },
    ]);
  });

  test("kinds are known by the words people use", () => {
    expect([
      readUnitKind("Residential"),
      readAttachmentKind("CATV"),
      readSurface("creek"),
      readYesNo("Y"),
    ]).toMatchObject([{ value: "home" }, { value: "communication" }, { value: "water" }, { value: true }]);
  });

  test("a word that is no kind is refused with the kinds there are", () => {
    expect(readSurface("lava")).toMatchObject({
      ok: false,
      accepted:
        "road, highLoadRoad, limitedAccessRoad, driveway, roadside, rail, water, sailingWater, pedestrian, field",
    });
    expect(readUnitKind("constructor")).toMatchObject({ ok: false });
  });
});
