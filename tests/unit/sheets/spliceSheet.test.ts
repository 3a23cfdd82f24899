import { describe, expect, it } from "vitest";
import { paperNames } from "../../../core/model/paperNames.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { cellText } from "../../../core/sheets/paper/figure.ts";
import { outsideBorder, overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { paperOf } from "../../../core/sheets/paper/paper.ts";
import type { TableRow } from "../../../core/sheets/paper/tableRow.ts";
import { closureDiagram } from "../../../core/sheets/splice/closureDiagram.ts";
import { closureRows } from "../../../core/sheets/splice/closureSplices.ts";
import { hubDiagram } from "../../../core/sheets/splice/hubDiagram.ts";
import { hubRows } from "../../../core/sheets/splice/hubSplices.ts";
import {
  diagramHeightMm,
  diagramPages,
  type EndBlock,
  type SpliceDiagram,
} from "../../../core/sheets/splice/spliceDiagram.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const laid = windingRoute();
const spliced = withRows(
  laid,
  "fiberUse",
  [141, 142, 143].map((fiber, index) => ({
    id: `use-lateral-${fiber}`,
    cableId: "cable-line0",
    fiber,
    purpose: "lateral" as const,
    terminalId: null,
    splitterId: null,
    closureId: "closure-1",
    lateralCableId: "cable-line1",
    lateralFiber: index + 1,
    feedId: "feed-1",
  })),
);
const route = changed(spliced, "feed", "feed-1", { hubSplitCount: 64 });
const plant = openPlant(route);
const uses = [...route.fiberUse.values()];
const cellsOf = (rows: readonly TableRow[]) => rows.flatMap((row) => ("cells" in row ? [row.cells] : []));
const saidBy = (rows: readonly TableRow[]) =>
  rows.flatMap((row) => ("group" in row ? [row.group] : "note" in row ? [row.note] : [])).join("\n");
const titlesOf = (of: Route) =>
  composeSet(openPlant(of), [], { kinds: ["splice"] }).sheets.map((one) => one.title.replace(/, \d+ of \d+$/, ""));

describe("the splice sheet of the hub", () => {
  it("gives every fiber that a hub output lights one leg, with its tube and fiber as chips", () => {
    const lit = new Set(uses.filter((one) => one.feedId !== null).map((one) => `${one.cableId} ${one.fiber}`));
    const rows = hubRows(plant).flatMap((row) => ("cells" in row ? [row] : []));
    expect(rows).toHaveLength(lit.size);
    for (const { cells, chips } of rows) {
      expect(cells[3]).toMatch(new RegExp(`^${chips?.[0]}  `));
      expect(cells[4]).toMatch(new RegExp(`^${chips?.[1]}  `));
    }
  });

  it("names the legs to cap and the fibers to store", () => {
    const said = saidBy(hubRows(plant));
    expect(said).toMatch(/Legs? [\d, to]+: no fiber; cap and tag\./);
    expect(said).toMatch(/Fibers? [\d, to]+: spare; store in the tray/);
  });
});

/** Numbers told as ranges, one by one. */
const numbersIn = (text: string): readonly number[] =>
  [...text.matchAll(/(\d+)(?: to (\d+))?/g)].flatMap(([, from, to]) =>
    Array.from({ length: Number(to ?? from) - Number(from) + 1 }, (_, index) => Number(from) + index),
  );

describe("the splice diagram of a closure", () => {
  const diagram = closureDiagram(plant, "closure-1");
  const ends = (blocks: readonly EndBlock[]) => blocks.flatMap((one) => one.ends);

  it("joins what is fused as the table tells it, and lets all else pass", () => {
    const spliced = diagram.joins.filter((one) => one.isSpliced);
    expect(spliced.map((one) => [one.from, one.to])).toEqual(
      [1, 2, 3].map((fiber) => [`cable-line0 ${fiber + 140}`, `cable-line1 ${fiber}`]),
    );
    const passing = diagram.joins.filter((one) => !one.isSpliced);
    expect(passing).toHaveLength(ends(diagram.left).filter((one) => one.fiber === null).length);
  });

  it("shows every fiber of the cable once, by itself or in a run", () => {
    const shown = ends(diagram.left).flatMap(({ fiber, text }) => {
      if (fiber) return [fiber.number];
      const numbers = numbersIn(text);
      return text.startsWith("Tube")
        ? numbers.flatMap((tube) => Array.from({ length: 12 }, (_, index) => (tube - 1) * 12 + index + 1))
        : numbers;
    });
    expect(shown).toEqual(Array.from({ length: 144 }, (_, index) => index + 1));
  });

  it("stands under the table where there is room, and is never drawn where nothing is spliced", () => {
    const titles = titlesOf(route);
    expect(titles).toContain("Splice diagram, hub");
    expect(titles).not.toContain("Splice diagram, closure C1");
    const { sheets } = composeSet(plant, [], { kinds: ["splice"] });
    const said = (title: string) =>
      sheets
        .filter((one) => one.title === title)
        .flatMap((one) => one.marks.flatMap((mark) => ("text" in mark ? mark.text : [])));
    expect(said("Splice sheet, closure C1").join("\n")).toContain("Splice diagram, closure C1");
    expect(said("Splice sheet, closure C2").join("\n")).not.toContain("Splice diagram");
  });
});

describe("closures with nothing to splice", () => {
  const [closure] = route.closure.values();
  if (!closure) throw new Error("the winding route has no closure");
  const more = Array.from({ length: 12 }, (_, index) => ({ ...closure, id: `bare-${index}`, name: `B${index}` }));
  const many = withRows(route, "closure", more);
  const { sheets } = composeSet(openPlant(many), [], { kinds: ["splice"] });
  const shared = sheets.filter((one) => one.title.startsWith("Splice sheet, closures without splices"));
  const said = shared.flatMap((one) => one.marks.flatMap((mark) => ("text" in mark ? mark.text : [])));

  it("share sheets, each told once with a box to tick, while what is spliced keeps its own", () => {
    expect(shared.length).toBeLessThan(more.length / 2);
    for (const { name } of more) expect(said.filter((text) => text.startsWith(`${name} on `))).toHaveLength(1);
    expect(said.filter((text) => text.startsWith("□ Sealed"))).toHaveLength(more.length + 1);
    expect(said.some((text) => text.startsWith("C1 on "))).toBe(false);
    expect(titlesOf(many)).toContain("Splice sheet, closure C1");
    expect(titlesOf(many).filter((title) => /closure B|closure C2/.test(title))).toEqual([]);
  });

  it("stand within the border and over nothing", () => {
    for (const paper of ["ANSI A", "ANSI B", "A1"] as const) {
      const set = composeSet(openPlant(many), [], { kinds: ["splice"], paper }).sheets;
      const own = set.filter((one) => one.title.startsWith("Splice sheet, closures without splices"));
      expect(own.length).toBeGreaterThan(0);
      expect(own.flatMap((one) => [...outsideBorder(one, paperOf(paper).border), ...overlaps(one)])).toEqual([]);
    }
  });
});

describe("a splice diagram cut over sheets", () => {
  const diagram = hubDiagram(plant);
  const keys = (pages: readonly SpliceDiagram[], side: "left" | "right") =>
    pages.flatMap((page) => page[side].flatMap((block) => block.ends.map((one) => one.key))).sort();

  it.each([60, 100, 150, 400])("keeps every end and every splice once on sheets %d mm high", (heightMm) => {
    const pages = diagramPages(diagram, heightMm);
    for (const page of pages) expect(diagramHeightMm(page)).toBeLessThanOrEqual(heightMm);
    expect(keys(pages, "left")).toEqual(keys([diagram], "left"));
    expect(keys(pages, "right")).toEqual(keys([diagram], "right"));
    expect(pages.flatMap((page) => page.joins)).toEqual(diagram.joins);
  });

  it.each(paperNames)("lays no text over text on %s", (paper) => {
    const { sheets } = composeSet(plant, [], { kinds: ["splice"], paper });
    expect(sheets.flatMap(overlaps)).toEqual([]);
    expect(sheets.flatMap((sheet) => outsideBorder(sheet, paperOf(paper).border))).toEqual([]);
  });
});

describe("the splice sheet of a closure", () => {
  const closure = route.closure.get("closure-1");
  const own = uses.filter((one) => one.closureId === closure?.id);
  const rows = closureRows(plant, closure?.id ?? "");

  it("tells for every fiber spliced there which fiber of which cable it goes to", () => {
    expect(own.length).toBeGreaterThan(0);
    expect(cellsOf(rows).map((cells) => [cells[1] ?? "", cells[5] ?? ""].map(cellText))).toEqual(
      [...own].sort((a, b) => a.fiber - b.fiber).map((use) => [String(use.fiber), String(use.lateralFiber)]),
    );
  });

  it("says which tubes to open, which stay closed, and what of the cable that begins there is stored", () => {
    const said = saidBy(rows);
    expect(said).toContain("Open tube");
    expect(said).toContain("Leave closed:");
    expect(said).toContain("not spliced; store in the tray");
  });

  it("has a sheet of its own, and there is none where there is no closure", () => {
    expect(titlesOf(route)).toContain(`Splice sheet, closure ${closure?.name}`);
    expect(titlesOf(smallRoute()).filter((title) => title.includes("closure"))).toEqual([]);
  });
});
