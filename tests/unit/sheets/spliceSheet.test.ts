import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { closureRows } from "../../../core/sheets/closureSplices.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { cellText } from "../../../core/sheets/figure.ts";
import { hubRows } from "../../../core/sheets/hubSplices.ts";
import type { TableRow } from "../../../core/sheets/table.ts";
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
