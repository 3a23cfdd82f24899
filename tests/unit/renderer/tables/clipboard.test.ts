import { expect, test } from "vitest";
import { blockOf, htmlOf, tsvOf } from "../../../../renderer/tables/clipboard.ts";

test("a block goes out and comes back as it was, tabs, quotes and line ends in cells included", () => {
  const block = [
    ["P-1", 'he said "up"', "two\nlines"],
    ["", "a\tb", "3.5"],
  ];
  expect(blockOf(tsvOf(block))).toEqual(block);
});

test("a spreadsheet's last line end is no row of its own, and an empty cell at a line's end is one", () => {
  expect(blockOf("a\tb\r\nc\t\r\n")).toEqual([
    ["a", "b"],
    ["c", ""],
  ]);
  expect(blockOf("one")).toEqual([["one"]]);
});

test("what would turn into a formula is made plain, figures stay figures", () => {
  expect(tsvOf([["=1+1", "+cmd", "@x", "-12.5", "-no"]])).toBe("'=1+1\t'+cmd\t'@x\t-12.5\t'-no");
  expect(htmlOf([["=a<b"]])).toBe("<table><tr><td>'=a&lt;b</td></tr></table>");
});
