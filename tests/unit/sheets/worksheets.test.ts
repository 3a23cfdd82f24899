import { describe, expect, it } from "vitest";
import { explain } from "../../../core/explain/explain.ts";
import type { FigureRef } from "../../../core/explain/explanation.ts";
import { figureOfText, figureText } from "../../../core/explain/figureText.ts";
import { clearanceCases } from "../../../core/model/clearanceRows.ts";
import { lineWeightsMm } from "../../../core/model/lineWeights.ts";
import type { Settings } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { pensMm } from "../../../core/sheets/paper/displayList.ts";
import { outsidePaper, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { composeWorksheets } from "../../../core/sheets/worksheets.ts";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const route = windingRoute();
const plant = openPlant(route);
const first = (rows: ReadonlyMap<string, unknown>) => [...rows.keys()][0] ?? "";
const [spanId, dropId] = [first(route.span), first(route.drop)];

const refs: readonly FigureRef[] = [
  ...clearanceCases.flatMap((part): FigureRef[] => [
    { figure: "sag", id: spanId, part },
    { figure: "tension", id: spanId, part },
    { figure: "tensionShare", id: spanId, part },
    { figure: "clearance", id: first(route.crossing), part },
  ]),
  { figure: "supportTension", id: spanId, part: "loaded" },
  { figure: "lightUp", id: dropId },
  { figure: "lightDown", id: dropId },
  { figure: "dropRun", id: dropId },
  { figure: "dropCut", id: dropId },
  { figure: "terminalStation", id: first(route.terminal) },
  { figure: "poleSeparation", id: "phone-pole-M001" },
  { figure: "sheath", id: first(route.cable) },
  { figure: "spanSeparation", id: spanId, wireId: "phone-pole-M001" },
];
const textsOf = (ref: FigureRef, from = plant) =>
  composeWorksheets(from, [ref]).sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );

describe("worksheets", () => {
  it.each(refs.map((ref) => [figureText(ref), ref] as const))(
    "work %s out with every input and its result",
    (_, ref) => {
      const told = explain(plant, ref, "us");
      if (!told) throw new Error("no such figure");
      const texts = textsOf(ref);
      expect(texts.join(" ")).toContain(told.title.split(",")[0]);
      if (told.kind === "unknown") return;
      expect(texts).toContain(`${told.result.symbol} = ${told.result.text}`);
      for (const input of told.inputs) expect(texts).toContain(input.symbol);
    },
  );

  it("stand under the company's logo in its own shape, over no words, with lines as heavy as the company wants them", () => {
    const href = "data:image/png;base64,iVBORw0KGgo=";
    for (const [widthPx, heightPx] of [
      [100, 100],
      [900, 100],
      [100, 300],
    ] as const) {
      const { sheets } = composeWorksheets(plant, refs.slice(0, 3), { href, widthPx, heightPx });
      for (const sheet of sheets) {
        const [image, ...more] = sheet.marks.flatMap((mark) => (mark.kind === "image" ? [mark] : []));
        const [, , widthMm = 0, heightMm = 0] = image?.boxMm ?? [];
        expect(more).toEqual([]);
        expect(widthMm / heightMm).toBeCloseTo(widthPx / heightPx, 6);
      }
      expect(sheets.flatMap(overlaps)).toEqual([]);
      expect(sheets.flatMap(outsidePaper)).toEqual([]);
    }
    const heaviest = (frameLineMm: Settings["frameLineMm"]) =>
      composeWorksheets(
        openPlant(changed(route, "settings", "settings", { frameLineMm })),
        refs.slice(0, 1),
      ).sheets.map(({ marks }) =>
        Math.max(...marks.flatMap((mark) => ("pen" in mark && mark.pen !== null ? [pensMm[mark.pen]] : []))),
      );
    const [light, usual, heavy] = lineWeightsMm.frameLineMm.map((one) => heaviest(one)[0] ?? 0);
    expect([light, heavy].every((one) => one !== undefined && one !== usual)).toBe(true);
  });

  it.each([
    ["letter paper", windingRoute()],
    ["A4", windingRoute({ unitSystem: "metric" })],
  ] as const)("lay no text over text and stay on %s", (_, of) => {
    const { sheets } = composeWorksheets(openPlant(of), refs);
    expect(sheets.length).toBeGreaterThanOrEqual(refs.length);
    expect(sheets.flatMap(overlaps).map((one) => [one.first.text, one.second.text])).toEqual([]);
    expect(sheets.flatMap(outsidePaper)).toEqual([]);
  });

  it("have no page for a figure whose row is gone", () => {
    expect(composeWorksheets(plant, [{ figure: "sheath", id: "gone" }]).sheets).toEqual([]);
  });

  it("mark a limit nobody has read as unverified", () => {
    const limits = [...route.clearanceLimit].map(
      ([id, row]) => [id, { ...row, basisMark: "memory" as const }] as const,
    );
    const doubted = openPlant({ ...route, clearanceLimit: new Map(limits) });
    const clearance: FigureRef = { figure: "clearance", id: first(route.crossing), part: "iced" };
    expect(textsOf(clearance, doubted).join(" ")).toContain("unverified");
    expect(textsOf(clearance).join(" ")).not.toContain("unverified");
  });

  it("are named by a text that leads back to the figure, and by no other", () => {
    const further: readonly FigureRef[] = [
      { figure: "heightBound", id: "pole-M001", part: "atMost", bound: "wire:phone" },
      { figure: "makeReadyTotal", id: "pole-M001", plan: 1 },
      { figure: "dropClearance", id: "drop-1", part: "hot", dropCrossingId: "crossing:1" },
      { figure: "groundClearance", id: "span-1", part: "iced" },
      { figure: "structureBeside", id: "barn" },
      { figure: "guyTension", id: "guy-1" },
    ];
    for (const ref of [...refs, ...further]) expect(figureOfText(figureText(ref))).toEqual(ref);
    for (const text of [
      "",
      "clearance",
      "clearance:c",
      "clearance:c:boiling",
      "sheath:a:b",
      "nonsense:a",
      "sag:a:hot:x",
    ])
      expect(figureOfText(text)).toBeNull();
  });
});
