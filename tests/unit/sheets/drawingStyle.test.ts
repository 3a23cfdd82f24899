import { describe, expect, it } from "vitest";
import { writeRouteDxf } from "../../../core/dxf/writeRouteDxf.ts";
import { writeSheetDxf } from "../../../core/dxf/writeSheetDxf.ts";
import { planTemplate, writeTemplate } from "../../../core/exchange/template.ts";
import { layerNamesTrouble, withLayerName } from "../../../core/model/layerNames.ts";
import { type LineMeaning, lineWeightsMm } from "../../../core/model/lineWeights.ts";
import { paperNames } from "../../../core/model/paperNames.ts";
import { settingsOf } from "../../../core/model/route.ts";
import { type Settings, tables } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { type Layer, type Mark, pensMm, type Sheet } from "../../../core/sheets/paper/displayList.ts";
import { outsideBorder, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { type PaperName, paperOf } from "../../../core/sheets/paper/paper.ts";
import type { Picture } from "../../../core/sheets/paper/picture.ts";
import { writeSvg } from "../../../core/sheets/paper/writeSvg.ts";
import { changedColumns } from "../../../core/sheets/revised/columnWords.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const routeOf = (settings: Partial<Settings>) => smallRoute({ settings });
const setOf = (settings: Partial<Settings>, logo: Picture | null = null) =>
  composeSet(openPlant(routeOf(settings)), [], { logo });
const pensOf = (sheets: readonly Sheet[], layer: Layer) =>
  sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => ("pen" in mark && mark.pen !== null && mark.layer === layer ? [pensMm[mark.pen]] : [])),
  );
const heaviest = (sheets: readonly Sheet[], layer: Layer) => Math.max(...pensOf(sheets, layer));

describe("weights of lines by their meaning", () => {
  const usual = setOf({}).sheets;
  const others: Readonly<Record<LineMeaning, Layer>> = {
    newLineMm: "strand",
    existingLineMm: "poles",
    dimensionLineMm: "dimensions",
    markLineMm: "findings",
    frameLineMm: "frame",
  };

  it("are those of the drawing where the company wants the usual ones", () => {
    const row = settingsOf(smallRoute());
    for (const meaning of Object.keys(others) as LineMeaning[]) expect(row[meaning]).toBe(lineWeightsMm[meaning][1]);
    expect(heaviest(usual, "strand")).toBe(0.5);
    expect(heaviest(usual, "frame")).toBe(0.5);
  });

  it("move the strand and what belongs to it by a step, and nothing else", () => {
    const heavy = setOf({ newLineMm: "0.7" }).sheets;
    expect(heaviest(heavy, "strand")).toBe(0.7);
    const heavier = new Map([
      [0.13, 0.18],
      [0.18, 0.25],
      [0.25, 0.35],
      [0.35, 0.5],
      [0.5, 0.7],
    ]);
    for (const layer of ["cable", "terminals", "drops"] as const)
      expect(pensOf(heavy, layer)).toEqual(pensOf(usual, layer).map((one) => heavier.get(one)));
    for (const layer of ["poles", "frame", "dimensions", "units"] as const)
      expect(pensOf(heavy, layer)).toEqual(pensOf(usual, layer));
  });

  it("keep every line within the series and every letter as it was", () => {
    const textsOf = (sheets: readonly Sheet[]) =>
      sheets.flatMap(({ marks }) => marks.filter((mark) => mark.kind === "text"));
    for (const meaning of Object.keys(others) as LineMeaning[]) {
      for (const weight of lineWeightsMm[meaning]) {
        const { sheets } = setOf({ [meaning]: weight });
        for (const layer of Object.values(others)) {
          for (const pen of pensOf(sheets, layer)) expect(Object.values(pensMm)).toContain(pen);
        }
        expect(textsOf(sheets)).toEqual(textsOf(usual));
      }
    }
  });

  it("outside their bounds are refused by the row itself", () => {
    expect(tables.settings.safeParse({ ...settingsOf(smallRoute()), newLineMm: "2.0" }).success).toBe(false);
  });
});

describe("names of layers", () => {
  const layerNames = "cable=C-CABL,strand=C-STRN";

  it("stand in SVG and DXF of sheets, the other layers under the program's own", () => {
    const { sheets, layerNames: names } = setOf({ layerNames });
    const plan = sheets.find((one) => one.kind === "plan");
    if (!plan) throw new Error("the small route has no plan");
    const svg = writeSvg(plan, names);
    expect(svg).toContain('data-layer="C-STRN"');
    expect(svg).not.toContain('data-layer="strand"');
    expect(svg).toContain('data-layer="poles"');
    const dxf = writeSheetDxf(plan, names).split("\r\n");
    expect(dxf).toContain("C-STRN");
    expect(dxf).not.toContain("STRAND");
    expect(dxf).toContain("POLES");
  });

  it("stand in the route in plan too, for lines and for labels", () => {
    const written = writeRouteDxf(routeOf({ layerNames: "cable=C-CABL,guys=C-GUYS" }));
    if (!written.ok) throw new Error(written.fault.what);
    const lines = written.value.split("\r\n");
    expect(lines).toContain("C-CABL");
    expect(lines).toContain("C-CABL-TEXT");
    expect(lines).not.toContain("CABLE");
    expect(lines).toContain("STRAND");
  });

  it.each([
    ["strand=Strand lines", /signs that DXF does not take/],
    ["strand=POLES", /name of two layers: strand and poles/],
    ["cable=X,strand=X", /name of two layers/],
    ["strand=0", /kept for what a DXF file puts there/],
    ["strand=S-TEXT", /kept for what a DXF file puts there/],
    [`strand=${"S".repeat(27)}`, /longer than 26 letters/],
    ["wires=W", /names a layer that no drawing has/],
  ])("%s is refused", (text, why) => {
    expect(layerNamesTrouble(text)).toMatch(why);
    expect(tables.settings.shape.layerNames.safeParse(text).success).toBe(false);
  });

  it("are given back by an empty one", () => {
    expect(withLayerName(withLayerName("", "strand", "C-STRN"), "cable", "C-CABL")).toBe(layerNames);
    expect(withLayerName(layerNames, "cable", "")).toBe("strand=C-STRN");
    expect(layerNamesTrouble(layerNames)).toBeNull();
  });
});

it("what changed of it since a revision is told in words", () => {
  const logo = `svg 1000x250 ${"a".repeat(64)}`;
  const [before, after] = [settingsOf(smallRoute()), settingsOf(routeOf({ logo, newLineMm: "0.7" }))];
  const plants = [openPlant(smallRoute()), openPlant(routeOf({ logo, newLineMm: "0.7" }))] as const;
  const told = ["lines of what is new from 0.5 mm to 0.7 mm", "logo added"];
  expect(changedColumns("settings", [before, after], plants)).toEqual(told);
  expect(changedColumns("settings", [{ ...after, logo: `${logo.slice(0, -1)}b` }, after], plants)).toEqual([
    "another logo",
  ]);
});

describe("the company's logo", () => {
  const href = "data:image/png;base64,iVBORw0KGgo=";
  const wide: Picture = { href, widthPx: 400, heightPx: 100 };
  const imagesOf = (sheet: Sheet) =>
    sheet.marks.filter((mark): mark is Extract<Mark, { kind: "image" }> => mark.kind === "image");

  it("stands in the title block of every sheet in its own shape, over no words, inside the border", () => {
    for (const paper of ["ANSI A", "A4", "ANSI D", "A1"] as const) {
      for (const logo of [wide, { ...wide, heightPx: 400 }, { ...wide, heightPx: 3 }]) {
        const { sheets } = setOf({ paper, company: "Marrow Bend Fiber Cooperative" }, logo);
        for (const sheet of sheets) {
          const [image, ...more] = imagesOf(sheet);
          const [, , width = 0, height = 0] = image?.boxMm ?? [];
          expect(more).toEqual([]);
          expect(width / height).toBeCloseTo(logo.widthPx / logo.heightPx, 6);
          expect(outsideBorder({ ...sheet, marks: image ? [image] : [] }, paperOf(paper).border)).toEqual([]);
        }
        expect(sheets.flatMap(overlaps)).toEqual([]);
        expect(sheets[0]?.marks.some((one) => one.kind === "text" && one.text.startsWith("Marrow Bend"))).toBe(true);
      }
    }
  });

  it("is as large as its shape lets it be: a square one 15 mm or more, a wide one most of the cell, on every paper", () => {
    const shownMm = (paper: PaperName, logo: Picture) => {
      const [image] = setOf({ paper }, logo).sheets.slice(0, 1).flatMap(imagesOf);
      return image?.boxMm[2] ?? 0;
    };
    for (const paper of paperNames) {
      expect(shownMm(paper, { ...wide, heightPx: 400 })).toBeGreaterThanOrEqual(15);
      // the cell is 37 mm wide inside on the narrowest paper
      expect(shownMm(paper, wide)).toBeGreaterThanOrEqual(36);
    }
  });

  it("is a picture in SVG; in DXF, which holds none, its frame with the company's name", () => {
    const { sheets } = setOf({ company: "Marrow Bend Fiber" }, wide);
    const [sheet] = sheets;
    if (!sheet) throw new Error("the small route has no sheet");
    expect(writeSvg(sheet)).toMatch(/<image [^>]*href="data:image\/png;base64,iVBORw0KGgo="><title>Marrow Bend Fiber</);
    const named = (one: Sheet) => writeSheetDxf(one).match(/Marrow Bend Fiber/g)?.length ?? 0;
    const bare = { ...sheet, marks: sheet.marks.filter((mark) => mark.kind !== "image") };
    expect(named(sheet)).toBe(named(bare) + 1);
  });

  it("goes with a template into another route, like weights and names", () => {
    const logo = `png 400x100 ${"a".repeat(64)}`;
    const own = { logo, newLineMm: "0.7", layerNames: "strand=C-STRN" } as const;
    const planned = planTemplate(smallRoute(), writeTemplate(routeOf(own), "iVBORw0KGgo="));
    if (!planned.ok) throw new Error(planned.fault.what);
    expect(planned.value).toMatchObject({ logo, logoBase64: "iVBORw0KGgo=" });
    expect(planned.value.rows.find((row) => row.table === "settings")?.after).toEqual({
      ...settingsOf(smallRoute()),
      ...own,
    });
  });
});
