import { describe, expect, test } from "vitest";
import { readingId, subjectOf } from "../../../core/closeout/subject.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { openChecker } from "../../../core/rules/checker.ts";
import { reportSchedules } from "../../../core/sheets/asBuilt/reportSheet.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { cellText } from "../../../core/sheets/paper/figure.ts";
import { overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { closedOut, signedFor } from "../../fixtures/route/closedOut.ts";
import { punchOf } from "../../fixtures/route/readingRow.ts";
import { spareM, withTrace } from "../../fixtures/route/tracedRoute.ts";

const done = signedFor(closedOut(smallRoute()), "accepted");

describe("the closeout report", () => {
  test("is not there while nothing was built, read or signed", () => {
    expect(reportSchedules(openPlant(smallRoute()), [])).toEqual([]);
  });

  test("tells gates, kinds, readings and signatures of a route closed out, its digest in full", () => {
    expect(namesOf(done)).toEqual(["Gates", "Built things", "Readings", "Sheath marks", "Signatures"]);
    expect(linesOf(done, "Gates").every((line) => line.includes("nothing missing"))).toBe(true);
    expect(linesOf(done, "Signatures")).toEqual([
      expect.stringContaining(done.signOff.get("sign-off-accepted")?.digest ?? "?"),
    ]);
  });

  test("an offset beyond its tolerance is told as outside the limit, with how much and against what", () => {
    const id = readingId(subjectOf("terminal", "terminal-1"), "offset");
    const value = (done.reading.get(id)?.value ?? 0) + 0.254;
    const [line] = linesOf(changed(done, "reading", id, { value }), "Readings").filter((one) =>
      one.includes("outside"),
    );
    expect(line).toContain("from the pole | 36 in | 46 in | +10.0 in | ◆ outside the limit");
    expect(
      linesOf(done, "Readings").some((one) =>
        one.includes("from the pole | 36 in | 36 in | 0.0 in | within the limit"),
      ),
    ).toBe(true);
  });

  test("what was asked for and not read says so", () => {
    const reading = new Map([...done.reading].filter(([, { what }]) => what !== "height"));
    expect(
      linesOf({ ...done, reading }, "Readings").some(
        (one) => one.includes("strand height") && one.includes("not read"),
      ),
    ).toBe(true);
  });

  test("traces with their events and the punch list have tables of their own", () => {
    const traced = withTrace(done, {}, [{ atM: spareM, ends: true }]);
    const route = { ...traced, punch: new Map([["punch-1", punchOf("punch-1", 1)]]) };
    expect(namesOf(route)).toEqual(expect.arrayContaining(["Traces", "Punch list"]));
    expect(linesOf(route, "Traces")[0]).toContain("end of the fiber");
    expect(linesOf(route, "Punch list")[0]).toContain("open");
  });

  test("its sheets never say safe, and no text lies on other text", () => {
    const plant = openPlant(done);
    const { sheets } = composeSet(plant, openChecker(plant).findings(), { kinds: ["report"] });
    expect(sheets.length).toBeGreaterThan(4);
    expect(sheets.flatMap(overlaps)).toEqual([]);
    const texts = sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
    expect(texts.filter((text) => /\bsafe\b|undefined|NaN|\[object/i.test(text))).toEqual([]);
  });
});

function schedulesOf(route: Route) {
  const plant = openPlant(route);
  return reportSchedules(plant, openChecker(plant).findings());
}

function namesOf(route: Route): readonly string[] {
  return schedulesOf(route).map(({ name }) => name);
}

function linesOf(route: Route, name: string): readonly string[] {
  const rows = schedulesOf(route).find((one) => one.name === name)?.rows ?? [];
  return rows.flatMap((row) => ("cells" in row ? [row.cells.map(cellText).join(" | ")] : []));
}
