import { expect, test } from "vitest";
import { kindOfName } from "../../../renderer/app/dropping.ts";
import { savedWords, sizeWords, withLocalTimes } from "../../../renderer/start/words.ts";

test("a route nobody has edited yet is all saved, and an edited one tells when", () => {
  expect(savedWords(null)).toBe("All changes saved");
  expect(savedWords("2026-03-02T08:00:00.000Z")).toMatch(/^All changes saved, last edit .*2026.*\d\d:\d\d/);
});

test("a small file is read in kilobytes, a large one in megabytes, and none is nothing", () => {
  expect([10, 98_304, 12_345_678].map(sizeWords)).toEqual(["1 kB", "98 kB", "12.3 MB"]);
});

test("the time since when somebody has a file is read on the wall clock", () => {
  const told = withLocalTimes("Field has the file open, since 2026-03-02T08:00:00.000Z.");
  expect(told).toMatch(/^Field has the file open, since .*2026.*\d\d:\d\d.*\.$/);
  expect(told).not.toContain("T08:00");
});

test("a dropped list is taken for what its name says, and for poles where it says nothing", () => {
  const names = ["addresses.csv", "Attachments.xlsx", "crossings.geojson", "span pairs.csv", "survey 12.csv"];
  expect(names.map(kindOfName)).toEqual(["livingUnit", "attachment", "crossing", "spanPair", "pole"]);
});
