import { describe, expect, it } from "vitest";
import { paperNames } from "../../../core/model/paperNames.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { outsideBorder, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { paperOf } from "../../../core/sheets/paper/paper.ts";
import { estateRoute } from "../../fixtures/sheets/estateRoute.ts";
import { findingOf } from "../../fixtures/sheets/findings.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const findings = [findingOf({ severity: "error", at: { eastM: 40, northM: 8 } })];
const routes: readonly (readonly [string, Route])[] = [
  ["a winding route with laterals", windingRoute()],
  ["real poles and houses of an estate", estateRoute()],
];

describe.each(paperNames)("a set on %s", (name) => {
  const paper = paperOf(name);

  it.each(routes)("lays no text over text, keeps to the border and letters at 2 mm or more, on %s", (_, route) => {
    const { sheets } = composeSet(openPlant(route), findings, { paper: name });
    expect(sheets.every((sheet) => sheet.sizeMm === paper.sizeMm)).toBe(true);
    const texts = sheets.flatMap((sheet) => sheet.marks.flatMap((mark) => (mark.kind === "text" ? [mark] : [])));
    expect(sheets.flatMap(overlaps).map((one) => [one.sheet, one.first.text, one.second.text])).toEqual([]);
    expect(sheets.flatMap((sheet) => outsideBorder(sheet, paper.border))).toEqual([]);
    expect(texts.filter((mark) => mark.heightMm < 2)).toEqual([]);
  });
});

describe("the paper of a set", () => {
  const sizeOf = (route: Route) => composeSet(openPlant(route), [], { kinds: ["cover"] }).sheets[0]?.sizeMm;

  it("is ANSI B where lengths are in feet and A3 where they are in metres, unless somebody asks for another", () => {
    expect(sizeOf(windingRoute())).toEqual(paperOf("ANSI B").sizeMm);
    expect(sizeOf(windingRoute({ unitSystem: "metric" }))).toEqual(paperOf("A3").sizeMm);
  });

  it("holds more of the route the larger it is", () => {
    const countOn = (name: "A4" | "A3" | "A1") =>
      composeSet(openPlant(windingRoute()), [], { kinds: ["plan", "terminal"], paper: name }).sheets.length;
    expect(countOn("A4")).toBeGreaterThan(countOn("A3"));
    expect(countOn("A3")).toBeGreaterThan(countOn("A1"));
  });
});
