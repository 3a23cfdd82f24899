import { describe, expect, test } from "vitest";
import { subjectOf } from "../../../core/closeout/subject.ts";
import { asBuiltRows } from "../../../core/edits/asBuiltRows.ts";
import { routeWith } from "../../../core/layout/rowSet.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { coilOfTerminal } from "../../../core/plant/sheathOpening.ts";
import { terminalHang } from "../../../core/plant/terminalView.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
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
    expect(asBuiltRows(read(readingRow(subjectOf("pole", "pole-2"), "height", 30)))).toEqual([]);
    expect(asBuiltRows(read(readingRow(subjectOf("drop", "drop-1"), "portOfDrop", 2)))).toEqual([]);
  });

  test("has two drops in each other's ports where they were found so", () => {
    const [first, second] = ["drop-1", "drop-2"].map((id) => subjectOf("drop", id));
    if (!first || !second) throw new Error("two drops");
    const route = read(readingRow(first, "portOfDrop", 2), readingRow(second, "portOfDrop", 1));
    const built = routeWith(route, asBuiltRows(route));
    expect(["drop-1", "drop-2"].map((id) => built.drop.get(id)?.port)).toEqual([2, 1]);
  });

  test("takes a coil as far along as its terminal, and its reason for the place stays", () => {
    const coil = changed(read(readingRow(terminal, "offset", drawnM + 0.2)), "slack", "coil-1", { offsetM: 2 });
    const route = changed(coil, "terminal", "terminal-1", { reason: "tree" });
    const built = routeWith(route, asBuiltRows(route));
    expect(built.slack.get("coil-1")?.offsetM).toBeCloseTo(2.2, 9);
    expect(built.terminal.get("terminal-1")?.reason).toBe("tree");
  });
});

describe("the set as built", () => {
  const pole = (n: number) => subjectOf("pole", `pole-${n}`);
  const route = read(
    readingRow(terminal, "offset", drawnM + 0.2032),
    readingRow(terminal, "slack", 9.144),
    readingRow(pole(2), "height", 5.7912),
    readingRow(pole(3), "height", 30.48),
    readingRow(subjectOf("drop", "drop-2"), "portOfDrop", 3),
  );
  const rows = asBuiltRows(route);
  const revised = { revisionId: null, since: { letter: "", before: openPlant(route), rows }, isAsBuilt: true };
  const { sheets } = composeSet(openPlant(routeWith(route, rows)), [], { revised });
  const textsOn = (kind: string) =>
    sheets
      .filter((one) => one.kind === kind)
      .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));

  /** Texts of tables with a stroke through them. */
  const struckOn = (kind: string): readonly string[] =>
    sheets
      .filter((one) => one.kind === kind)
      .flatMap(({ marks }) =>
        marks.flatMap((mark, at) => {
          const next = marks[at + 1];
          const isStroke = next?.kind === "line" && next.layer === "text" && next.pen === "medium";
          return mark.kind === "text" && mark.layer === "tables" && isStroke ? [mark.text] : [];
        }),
      );

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
    expect(textsOn("cover").join(" ")).toContain(
      "Built otherwise than designed 36 in 42 in As designed, struck; under it as built",
    );
    expect(sheets.filter(({ kind }) => kind === "closeout" || kind === "report")).toEqual([]);
  });

  test("strikes the designed height of our strand on the profile and draws its designed line struck, with its key", () => {
    expect(textsOn("profile")).toEqual(
      expect.arrayContaining(["ours 20 ft 8 in", "ours 19 ft 0 in", "designed, and built otherwise"]),
    );
    const slashes = (kind: string) =>
      sheets
        .filter((one) => one.kind === kind)
        .flatMap(({ marks }) => marks.filter((mark) => mark.kind === "line" && isSlash(mark.pointsMm)));
    expect(slashes("profile").length).toBeGreaterThan(6);
    const drawn = composeSet(openPlant(smallRoute()), []).sheets.filter((one) => one.kind === "profile");
    expect(drawn.flatMap(({ marks }) => marks.filter((one) => one.kind === "line" && isSlash(one.pointsMm)))).toEqual(
      [],
    );
    expect(
      drawn.flatMap(({ marks }) => marks.filter((one) => one.kind === "text" && one.text.includes("otherwise"))),
    ).toEqual([]);
  });

  test("strikes figures in the tables: heights asked for, sheath along the cable, whose port it is", () => {
    expect(struckOn("profile")).toEqual(expect.arrayContaining(["20 ft 8 in, 20 ft 8 in"]));
    expect(struckOn("permit")).toEqual(["20 ft 8 in"]);
    expect(struckOn("reel")).toContain("20");
    expect(struckOn("schedule")).toEqual(["2 Test Rd", "T1-2", "spare"]);
  });

  test("lists the drop that was found in another port", () => {
    expect(textsOn("revision")).toContain("Drop to 2 Test Rd moved from T1 port 2 to T1 port 3");
  });

  test("lists what was read and no drawing takes, with why", () => {
    expect(textsOn("revision").filter((one) => one.startsWith("◆"))).toContain(
      "◆ Pole P3, strand height 100 ft 0 in: that is above the top of the pole",
    );
  });

  test("no text lies on other text", () => {
    expect(sheets.flatMap((sheet) => overlaps(sheet).map((pair) => [sheet.number, pair]))).toEqual([]);
  });
});

/** The stroke of a slash through the designed line. */
function isSlash(points: readonly (readonly [number, number])[]): boolean {
  const [a, b] = points;
  return points.length === 2 && !!a && !!b && Math.abs(b[0] - a[0] - 1.6) < 1e-9 && Math.abs(b[1] - a[1] - 2.6) < 1e-9;
}

function middleOf(points: readonly (readonly [number, number])[]): readonly [number, number] {
  const [a, b] = points;
  return a && b ? [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] : [Number.NaN, Number.NaN];
}
