import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { cablePath, sheathLength } from "../../../core/plant/cablePath.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import type { SheetKind } from "../../../core/sheets/book.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { cellText, lengthCell } from "../../../core/sheets/paper/figure.ts";
import { chartPages } from "../../../core/sheets/splice/fiberChartRows.ts";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const route = windingRoute();
const plant = openPlant(route);
const textsOf = (of: Route, kind: SheetKind) =>
  composeSet(openPlant(of), [], { kinds: [kind] }).sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );

describe("the cable and reel schedule", () => {
  it("counts the sheath up from pole to pole, coils included, to all of it at the far end", () => {
    const texts = textsOf(route, "reel");
    for (const cable of route.cable.values()) {
      const { totalM } = sheathLength(plant, cable.id);
      expect(totalM).toBeGreaterThan(cablePath(plant, cable.id).lengthM);
      expect(texts).toContain(cellText(lengthCell(totalM, "us")));
    }
  });

  it("says by how much a cable is longer than its reel", () => {
    const short = changed(route, "cable", "cable-line0", { reelLengthM: 100 });
    expect(textsOf(short, "reel").some((text) => text.includes("◆") && text.includes("longer than its reel"))).toBe(
      true,
    );
    expect(textsOf(route, "reel").some((text) => text.includes("◆"))).toBe(false);
  });
});

describe("a fiber chart", () => {
  it("shows every fiber of every cable once, in whole tubes", () => {
    for (const cable of route.cable.values()) {
      const { fiberCount, fibersPerTube } = plant.rowOf("cableType", cable.cableTypeId);
      const pages = chartPages(plant, cable.id, 48);
      expect(pages.flatMap((page) => page.fibers.map((one) => one.fiber))).toEqual(
        Array.from({ length: fiberCount }, (_, index) => index + 1),
      );
      for (const page of pages.slice(0, -1)) expect(page.fibers.length % fibersPerTube).toBe(0);
    }
  });

  it("of a cable without a used fiber takes one line, and short charts share a sheet", () => {
    const unused = { ...route, fiberUse: new Map() };
    const { sheets } = composeSet(openPlant(unused), [], { kinds: ["fiber"] });
    expect(sheets).toHaveLength(1);
    expect(sheets[0]?.keys).toEqual(expect.arrayContaining([...route.cable.keys()].map((id) => `fiber ${id} 1`)));
    expect(textsOf(unused, "fiber").filter((text) => text.endsWith(": spare")).length).toBe(sheets[0]?.keys.length);
  });

  it("tells in its legend every kind of line it draws", () => {
    const told = ["in use, from the feed end", "dark beyond the cut, or held", "spare"];
    expect(textsOf(route, "fiber")).toEqual(expect.arrayContaining(told));
  });

  it("names what each used fiber lights, and the places where fibers leave from the feed end on", () => {
    const pages = chartPages(plant, "cable-line0", 48);
    const uses = pages.flatMap((page) => page.fibers.flatMap((one) => one.uses));
    expect(uses).toHaveLength([...route.fiberUse.values()].filter((one) => one.cableId === "cable-line0").length);
    for (const { places } of pages) {
      const stations = places.map((one) => one.stationM);
      expect(stations).toEqual([...stations].sort((a, b) => a - b));
    }
    const texts = textsOf(route, "fiber");
    expect(texts.some((text) => text.startsWith("T1, splitter 1"))).toBe(true);
    expect(texts).toContain("spare");
  });
});
