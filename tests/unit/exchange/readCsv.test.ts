import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readCsv } from "../../../core/exchange/readCsv.ts";
import { tableLimits } from "../../../core/exchange/table.ts";
import { csv, fixtureText } from "./importRoute.ts";

describe("delimited text", () => {
  const spectrum = readdirSync(new URL("../../fixtures/exchange/csv-spectrum", import.meta.url)).filter((name) =>
    name.endsWith(".csv"),
  );

  test("the published cases are there", () => expect(spectrum.length).toBe(8));

  test.each(spectrum)("the published case %s gives the published rows", (name) => {
    const table = csv(fixtureText(`csv-spectrum/${name}`));
    const rows = table.rows.map((row) =>
      Object.fromEntries(table.headings.map((heading, index) => [heading, row.cells[index]])),
    );
    expect(rows).toEqual(JSON.parse(fixtureText(`csv-spectrum/${name.replace(".csv", ".json")}`)));
  });

  test.each([
    ["comma", "tag,lon,lat\nP1,1,2\n"],
    ["semicolon", "tag;lon;lat\nP1;1;2\n"],
    ["tab", "tag\tlon\tlat\r\nP1\t1\t2\r\n"],
    ["byte order mark", "\uFEFFtag,lon,lat\rP1,1,2"],
  ])("a list with %s reads the same", (_, text) => {
    expect(csv(text)).toMatchObject({ headings: ["tag", "lon", "lat"], rows: [{ line: 2, cells: ["P1", "1", "2"] }] });
  });

  test("line numbers are the file's own past quoted line breaks and blank lines", () => {
    const table = csv('tag,note\nP1,"two\r\nlines"\n\nP2,\n');
    expect(table.rows).toEqual([
      { line: 2, cells: ["P1", "two\nlines"] },
      { line: 5, cells: ["P2", ""] },
    ]);
  });

  test("the apostrophe that guards a formula is taken off, and no other", () => {
    expect(csv("tag,note\n'=1+1,'tis\n'-5,''@x\n").rows.map((row) => row.cells)).toEqual([
      ["=1+1", "'tis"],
      ["-5", "'@x"],
    ]);
  });

  test("a row with a cell too many is reported with its line, and the others are kept", () => {
    const table = csv("tag,note\nP1,a, b\nP2,c\n");
    expect(table.rows).toEqual([{ line: 3, cells: ["P2", "c"] }]);
    expect(table.bad).toMatchObject([{ line: 2, value: "P1 | a |  b" }]);
  });

  test("a quote that is never closed is a fault at its line", () => {
    expect(readCsv("list.csv", 'tag,note\nP1,ok\nP2,"open\nP3,x\n')).toMatchObject({
      ok: false,
      fault: { code: "open-quote", where: "list.csv, line 3" },
    });
  });

  test("blank headings are named and repeated ones numbered", () => {
    expect(csv("tag,,tag\nP1,2,3\n").headings).toEqual(["tag", "column 2", "tag (2)"]);
  });

  test.each([
    ["nothing", "", "empty-table"],
    ["headings only", "tag,lon\n", "empty-table"],
    ["too many rows", `a\n${"1\n".repeat(tableLimits.rowCount + 1)}`, "too-many-rows"],
    ["too many columns", `${"a,".repeat(tableLimits.columnCount)}a\n1\n`, "too-many-columns"],
  ])("a file with %s is refused", (_, text, code) => {
    expect(readCsv("list.csv", text)).toMatchObject({ ok: false, fault: { code } });
  });
});
