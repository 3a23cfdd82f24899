import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import type { Revision } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import type { DrawingSet, Sheet } from "../../../core/sheets/paper/displayList.ts";
import { hasGlyphs } from "../../../core/sheets/paper/measureText.ts";
import { outsidePaper, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { estateRoute } from "../../fixtures/sheets/estateRoute.ts";
import { findingOf } from "../../fixtures/sheets/findings.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const findings = [
  findingOf({ severity: "error", key: "a", at: { eastM: 40, northM: 8 } }),
  findingOf({ key: "b" }),
  findingOf({
    severity: "note",
    key: "c",
    at: null,
    basis: { document: "NESC", clause: "T232-1", edition: "2023", mark: "memory" },
  }),
];
const routes: readonly (readonly [string, Route])[] = [
  ["a winding route with laterals", windingRoute()],
  ["the same in metres", windingRoute({ unitSystem: "metric" })],
  ["real poles and houses of an estate", estateRoute()],
  ["four poles", smallRoute()],
];
const sets = routes.map(([name, route]) => ({ name, set: composeSet(openPlant(route), findings) }));
const winding = composeSet(openPlant(windingRoute()), findings);

const textsOf = (sheet: Sheet) => sheet.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
const emptySheet: Sheet = {
  marks: [],
  number: "",
  title: "",
  kind: "plan",
  keys: [],
  scale: "none",
  sizeMm: { width: 0, height: 0 },
  links: [],
};
const sheetTexts = (set: DrawingSet, title: string) =>
  textsOf(set.sheets.find((one) => one.title.startsWith(title)) ?? emptySheet);

function coverTexts(route: Route): readonly string[] {
  const { sheets } = composeSet(openPlant(route), [], { kinds: ["cover"] });
  return sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
}

function cableOf(route: Route) {
  const [cable] = route.cable.values();
  if (!cable) throw new Error("no cable");
  return cable;
}

describe("a drawing set", () => {
  it.each(sets)("lays no text over text on $name", ({ set }) => {
    expect(set.sheets.flatMap(overlaps).map((one) => [one.sheet, one.first.text, one.second.text])).toEqual([]);
  });

  it.each(sets)(
    "keeps all text on the paper, at 2 mm or more, with a glyph for every character, on $name",
    ({ set }) => {
      for (const sheet of set.sheets) {
        expect(outsidePaper(sheet)).toEqual([]);
        for (const mark of sheet.marks) {
          if (mark.kind !== "text") continue;
          expect(mark.heightMm).toBeGreaterThanOrEqual(2);
          expect(hasGlyphs(mark.text, mark.face), mark.text).toBe(true);
        }
      }
    },
  );

  it("is the same when the rows came in another order", () => {
    const route = windingRoute();
    const turned = Object.fromEntries(
      Object.entries(route).map(([table, rows]) => [
        table,
        new Map(Array.from<readonly [string, object]>(rows).reverse()),
      ]),
    );
    expect(composeSet(openPlant({ ...route, ...turned }), findings)).toEqual(winding);
  });

  it("has a sheet for each terminal, numbered through, and links that lead to sheets of the set", () => {
    const route = windingRoute();
    const titles = winding.sheets.map((one) => one.title.replace(/, 1 of \d+$/, ""));
    for (const terminal of route.terminal.values()) expect(titles).toContain(`Terminal ${terminal.name}`);
    expect(winding.sheets.map((one) => one.number)).toEqual(winding.sheets.map((_, index) => String(index + 1)));
    const numbers = new Set(winding.sheets.map((one) => one.number));
    expect(winding.sheets.flatMap((one) => one.links).every((link) => numbers.has(link.to))).toBe(true);
  });

  it("names the sheet that goes on at each match line", () => {
    const texts = sheetTexts(winding, "Strand plan, F1, 0+00");
    expect(texts).toContain("continued on sheet 4");
    expect(texts).toContain("continued below");
    expect(texts).toContain("continued above");
  });

  it("leads from each strip of the plan to the profiles of its spans", () => {
    const profiles = winding.sheets.filter((one) => one.kind === "profile").map((one) => one.number);
    const plans = winding.sheets.filter((one) => one.kind === "plan");
    expect(
      plans.flatMap((one) => one.links).filter((link) => profiles.includes(link.to)).length,
    ).toBeGreaterThanOrEqual(plans.length);
    expect(sheetTexts(winding, "Strand plan, F1, 0+00").some((text) => / from the side: sheets? \d+/.test(text))).toBe(
      true,
    );
  });

  it("says not for construction while an error is open, and not when it is waived", () => {
    const across = "Not for construction";
    const says = (sheet: Sheet) => textsOf(sheet).includes("PRELIMINARY · NOT FOR CONSTRUCTION");
    expect(winding.sheets.every((sheet) => says(sheet) && textsOf(sheet).includes(across))).toBe(true);
    const waived = composeSet(openPlant(windingRoute()), [findingOf({ severity: "error", waiverId: "waiver-1" })]);
    expect(waived.sheets.some((sheet) => says(sheet) || textsOf(sheet).includes(across))).toBe(false);
  });

  it("is preliminary until the revision it shows is approved, and void once that is made void", () => {
    const stamps = (wishes: Partial<Revision>) => {
      const set = composeSet(openPlant(changed(windingRoute(), "revision", "revision-B", wishes)), []);
      return set.sheets.map((sheet) =>
        sheet.marks.flatMap((mark) => (mark.layer === "watermark" && mark.kind === "text" ? [mark.text] : [])),
      );
    };
    expect(new Set(stamps({}).flat())).toEqual(new Set(["Preliminary"]));
    expect(stamps({ approvedBy: "L. Brandt", approvedIso: "2026-04-18" }).flat()).toEqual([]);
    expect(
      new Set(stamps({ voidedBy: "L. Brandt", voidedIso: "2026-04-18", voidReason: "Wrong list" }).flat()),
    ).toEqual(new Set(["Void"]));
    expect(textsOf(composeSet(openPlant(smallRoute()), []).sheets[0] ?? emptySheet)).toContain("Not issued");
  });

  it("prints a limit from memory as unverified", () => {
    const texts = sheetTexts(winding, "Findings");
    expect(texts).toContain("from memory,");
    expect(texts).toContain("unverified");
  });

  it("shows the date of the last revision, and none where there is none", () => {
    expect(sheetTexts(winding, "Cover").filter((text) => text === "2026-04-17")).toHaveLength(2);
    const undated = composeSet(openPlant(smallRoute()), []);
    expect(undated.dateIso).toBe("");
    expect(undated.sheets.flatMap(textsOf).filter((text) => /^\d{4}-\d\d-\d\d/.test(text))).toEqual([]);
  });

  it("draws only the kinds asked for and renumbers what is left", () => {
    const set = composeSet(openPlant(smallRoute()), [], { kinds: ["plan", "bill"] });
    expect(set.sheets.map((one) => [one.number, one.title.split(",")[0]])).toEqual([
      ["1", "Strand plan"],
      ["2", "Bill of materials"],
    ]);
  });

  it("adds the cables of a route with many up by their type on the cover", () => {
    const route = windingRoute();
    const cables = Array.from(
      { length: 9 },
      (_, index) => [`more-${index}`, { ...cableOf(route), id: `more-${index}`, name: `More ${index}` }] as const,
    );
    const texts = coverTexts({ ...route, cable: new Map([...route.cable, ...cables]) });
    expect(texts.some((text) => /^\d+ cables?: /.test(text))).toBe(true);
    expect(texts.some((text) => /^Cable .+: /.test(text))).toBe(false);
    expect(coverTexts(route).some((text) => /^Cable .+: /.test(text))).toBe(true);
  });

  it("prints the standoff that was drawn, not the one that is usual", () => {
    const route = changed(smallRoute(), "terminal", "terminal-1", { offsetM: 1.2192 });
    expect(sheetTexts(composeSet(openPlant(route), []), "Terminal T1")).toContain("48 in");
  });

  it("tells tube, fiber and colour in words on the terminal sheet", () => {
    const texts = sheetTexts(composeSet(openPlant(smallRoute()), []), "Terminal T2");
    expect(texts).toContain("Open tube 1, blue BL");
    expect(texts).toContain("2  orange OR");
    expect(texts.join(" ")).toContain("Leave closed: tubes 2 to 4.");
  });
});
