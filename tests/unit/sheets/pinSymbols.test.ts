import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import type { SheetKind } from "../../../core/sheets/book.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import type { ArcMark, LineMark, Mark } from "../../../core/sheets/paper/displayList.ts";
import { overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { nailMm } from "../../../core/sheets/paper/pinSymbols.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const sheetsOf = (route: Route, kind: SheetKind) => composeSet(openPlant(route), [], { kinds: [kind] }).sheets;
const marksOf = (route: Route, kind: SheetKind) => sheetsOf(route, kind).flatMap((one) => one.marks);
const nailHeads = (marks: readonly Mark[], layer: Mark["layer"]) =>
  marks.filter(
    (mark): mark is ArcMark =>
      mark.kind === "arc" && mark.layer === layer && mark.radiusMm === nailMm.head && mark.fill === 0,
  );
const isSlash = (mark: Mark): mark is LineMark =>
  mark.kind === "line" && mark.layer === "poles" && mark.pen === "thick";

describe("what people decided, on paper", () => {
  it("is a nail at each pinned terminal and in the roof over each pinned drop of the plan", () => {
    expect(nailHeads(marksOf(smallRoute(), "plan"), "terminals")).toHaveLength(0);
    expect(nailHeads(marksOf(smallRoute(), "plan"), "units")).toHaveLength(0);
    const pinned = changed(changed(smallRoute(), "terminal", "terminal-1", { pinned: true }), "drop", "drop-1", {
      pinned: true,
    });
    expect(nailHeads(marksOf(pinned, "plan"), "terminals")).toHaveLength(1);
    expect(nailHeads(marksOf(pinned, "plan"), "units")).toHaveLength(1);
  });

  it("is a slash through each pole beside which no terminal may hang", () => {
    const [poleId = ""] = smallRoute().pole.keys();
    expect(marksOf(smallRoute(), "plan").filter(isSlash)).toHaveLength(0);
    const closed = changed(smallRoute(), "pole", poleId, { terminalAllowed: false });
    expect(marksOf(closed, "plan").filter(isSlash)).toHaveLength(1);
  });

  it("stands on a terminal's own sheet at the terminal and at the port, with words", () => {
    const [before, terminal, drop] = [
      smallRoute(),
      changed(smallRoute(), "terminal", "terminal-1", { pinned: true }),
      changed(smallRoute(), "drop", "drop-1", { pinned: true }),
    ].map((route) => marksOf(route, "terminal"));
    const told = (marks: readonly Mark[] = []) =>
      marks.some((mark) => mark.kind === "text" && mark.text === "Nail: pinned, no layout moves it");
    const heads = [before, terminal, drop].map((marks) => nailHeads(marks ?? [], "terminals").length);
    expect(heads).toEqual([0, 1, 1]);
    expect([before, terminal, drop].map(told)).toEqual([false, true, true]);
  });

  it("is in the legend, with every other sign", () => {
    const texts = marksOf(smallRoute(), "cover").flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
    expect(texts).toContain("Pinned: no layout moves it");
    expect(texts).toContain("Pole closed: no terminal hangs beside it");
  });

  it("leaves no text over text where everything is pinned and closed", () => {
    const route = windingRoute();
    const all = {
      ...route,
      terminal: new Map([...route.terminal].map(([id, one]) => [id, { ...one, pinned: true }])),
      drop: new Map([...route.drop].map(([id, one]) => [id, { ...one, pinned: true }])),
      pole: new Map([...route.pole].map(([id, one]) => [id, { ...one, terminalAllowed: false }])),
    };
    expect(
      [...sheetsOf(all, "plan"), ...sheetsOf(all, "terminal"), ...sheetsOf(all, "cover")].flatMap(overlaps),
    ).toEqual([]);
  });
});
