import { describe, expect, test } from "vitest";
import { subjectOf } from "../../../core/closeout/subject.ts";
import { asBuiltRows } from "../../../core/edits/asBuiltRows.ts";
import { routeWith } from "../../../core/layout/rowSet.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { coilOfTerminal } from "../../../core/plant/sheathOpening.ts";
import { terminalHang } from "../../../core/plant/terminalView.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { overlaps } from "../../../core/sheets/overlaps.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

const terminal = subjectOf("terminal", "terminal-1");
const drawnM = terminalHang(openPlant(smallRoute()), "terminal-1").fromPoleM;
const read = (...readings: ReturnType<typeof readingRow>[]): Route => withRows(smallRoute(), "reading", readings);

describe("the route as built", () => {
  test("is the design where nothing was read, and where it was read as drawn", () => {
    expect(asBuiltRows(smallRoute())).toEqual([]);
    expect(asBuiltRows(read(readingRow(terminal, "offset", drawnM)))).toEqual([]);
  });

  test("has terminal and coil where and as long as they were read", () => {
    const route = read(readingRow(terminal, "offset", drawnM + 0.2), readingRow(terminal, "slack", 7));
    const built = openPlant(routeWith(route, asBuiltRows(route)));
    expect(terminalHang(built, "terminal-1").fromPoleM).toBeCloseTo(drawnM + 0.2, 9);
    expect(coilOfTerminal(built, "terminal-1")?.storedM).toBe(7);
  });

  test("leaves out what the design cannot take", () => {
    expect(asBuiltRows(read(readingRow(terminal, "offset", 5000)))).toEqual([]);
  });
});

describe("the set as built", () => {
  const route = read(readingRow(terminal, "offset", drawnM + 0.2032), readingRow(terminal, "slack", 9.144));
  const rows = asBuiltRows(route);
  const revised = { revisionId: null, since: { letter: "", before: openPlant(route), rows }, isAsBuilt: true };
  const { sheets } = composeSet(openPlant(routeWith(route, rows)), [], { revised });
  const textsOn = (kind: string) =>
    sheets
      .filter((one) => one.kind === kind)
      .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));

  test("strikes the designed figure and prints the built one beside it, on the plan and on the job card", () => {
    for (const kind of ["plan", "terminal"]) expect(textsOn(kind)).toEqual(expect.arrayContaining(["36 in", "44 in"]));
    const plan = sheets.find((one) => one.kind === "plan");
    const struck =
      plan?.marks.flatMap((mark) => (mark.kind === "text" && mark.text === "36 in" ? [mark.atMm] : [])) ?? [];
    const crossed = struck.filter(([x, y]) =>
      plan?.marks.some(
        (mark) =>
          mark.kind === "line" &&
          mark.layer === "text" &&
          mark.pointsMm.length === 2 &&
          Math.hypot(...middleOf(mark.pointsMm).map((value, at) => value - ([x, y][at] ?? 0))) < 2,
      ),
    );
    expect(crossed.length).toBe(1);
  });

  test("says what was built otherwise, and that it is as built; forms and report are not among its sheets", () => {
    expect(textsOn("revision").join(" ")).toContain("What was built otherwise than designed");
    expect(textsOn("plan")).toContain("As built");
    expect(textsOn("cover").join(" ")).toContain("Built otherwise than designed: the design is struck");
    expect(sheets.filter(({ kind }) => kind === "closeout" || kind === "report")).toEqual([]);
  });

  test("no text lies on other text", () => {
    expect(sheets.flatMap((sheet) => overlaps(sheet).map((pair) => [sheet.number, pair]))).toEqual([]);
  });
});

function middleOf(points: readonly (readonly [number, number])[]): readonly [number, number] {
  const [a, b] = points;
  return a && b ? [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] : [Number.NaN, Number.NaN];
}
