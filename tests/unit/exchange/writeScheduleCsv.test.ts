import { expect, test } from "vitest";
import { writeScheduleCsv } from "../../../core/exchange/writeScheduleCsv.ts";
import { figure } from "../../../core/sheets/paper/figure.ts";

const text = writeScheduleCsv({
  name: "Ports and drops",
  headings: ["Terminal", "Run (ft)", "Part used (%)"],
  widths: [],
  notes: [],
  rows: [
    ["T-1", figure(1234.4, 0, { paper: "12+34" }), figure(61.2, 1, { before: "◆ " })],
    ['=cmd|"/c"!A1', figure(-5, 0), ""],
    ["-3", "", figure(12, 1)],
  ],
});

test("numbers stand bare, with their sign and without thousands; text that looks like a formula is guarded", () => {
  expect(text.split("\r\n")).toEqual([
    "Terminal,Run (ft),Part used (%)",
    "T-1,1234,◆ 61.2",
    `"'=cmd|""/c""!A1",-5,`,
    `"'-3",,12`,
    "",
  ]);
});
