import { describe, expect, it } from "vitest";
import { drawTable } from "../../../core/sheets/paper/table.ts";
import { pageRows } from "../../../core/sheets/paper/tablePages.ts";
import type { Column, TableRow } from "../../../core/sheets/paper/tableRow.ts";

const columns: readonly Column[] = [
  { heading: "Port", share: 1, align: "right" },
  { heading: "Cut", unit: "ft", share: 1, align: "right" },
  { heading: "Living unit", share: 4, wraps: true },
];
const box = { left: 20, right: 140, bottom: 20, top: 80 };
const rowsOf = (count: number): TableRow[] =>
  Array.from({ length: count }, (_, index) => ({ cells: [String(index + 1), "120", "12 Mill Street"] }));
const texts = (page: readonly TableRow[]) =>
  page.map((row) => ("cells" in row ? row.cells[0] : "group" in row ? row.group : row.note));

describe("tables", () => {
  it("keeps every row over the page breaks and every page inside its box", () => {
    const pages = pageRows(columns, rowsOf(40), box);
    expect(pages.flat()).toHaveLength(40);
    for (const page of pages) expect(drawTable(columns, page, box).bottom).toBeGreaterThanOrEqual(box.bottom);
  });

  it("moves a terminal whose ports would be torn apart to the next page", () => {
    const rows = ["T1", "T2", "T3"].flatMap((group) => [{ group }, ...rowsOf(6)]);
    const pages = pageRows(columns, rows, { ...box, top: 110 });
    expect(pages.map((page) => page.flatMap((row) => ("group" in row ? [row.group] : [])))).toEqual([
      ["T1", "T2"],
      ["T3"],
    ]);
  });

  it("says again whose rows go on where a group is longer than a page", () => {
    const pages = pageRows(columns, [{ group: "Open findings" }, ...rowsOf(20)], box);
    expect(texts(pages[1] ?? [])[0]).toBe("Open findings, continued");
  });

  it("sets numbers against the right edge and prints the unit in the heading once", () => {
    const { marks } = drawTable(columns, rowsOf(3), box);
    const cells = marks.filter((mark) => mark.kind === "text" && mark.text === "120");
    expect(cells).toHaveLength(3);
    expect(new Set(cells.map((mark) => mark.kind === "text" && `${mark.align} ${mark.atMm[0]}`)).size).toBe(1);
    expect(marks.filter((mark) => mark.kind === "text" && mark.text === "ft")).toHaveLength(1);
  });
});
