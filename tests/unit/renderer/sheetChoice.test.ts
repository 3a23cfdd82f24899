import { expect, test } from "vitest";
import { chosenSheets } from "../../../renderer/panels/sheets/sheetChoice.ts";

const sheets = (["cover", "plan", "plan", "terminal", "bill"] as const).map((kind, i) => ({
  number: String(i + 1),
  kind,
}));

test("all, the one shown, and a kind are chosen in the order of the set", () => {
  expect(chosenSheets({ kind: "all" }, sheets, "2")).toEqual(["1", "2", "3", "4", "5"]);
  expect(chosenSheets({ kind: "current" }, sheets, "2")).toEqual(["2"]);
  expect(chosenSheets({ kind: "sort", sort: "plan" }, sheets, "1")).toEqual(["2", "3"]);
});

test("a range may be of single numbers and stretches in any order, each sheet once", () => {
  expect(chosenSheets({ kind: "range", text: "4, 2-3, 3" }, sheets, "1")).toEqual(["2", "3", "4"]);
});

test("a range beyond the set, backwards or of words is refused", () => {
  for (const text of ["0", "5-9", "3-2", "all", "", "2,"])
    expect(chosenSheets({ kind: "range", text }, sheets, "1"), text).toBeNull();
});
