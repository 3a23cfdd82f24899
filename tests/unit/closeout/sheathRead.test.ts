import { describe, expect, test } from "vitest";
import { cableSheath, markUnitM } from "../../../core/closeout/sheathRead.ts";
import { subjectOf } from "../../../core/closeout/subject.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

const atPole = (n: number, figure: number) => readingRow(subjectOf("pole", `pole-${n}`, 0, "cable-1"), "mark", figure);
const at = (n: number, what: "markBefore" | "markAfter", figure: number) =>
  readingRow(subjectOf("terminal", `terminal-${n}`), what, figure);

/** Sheath of the small route, in feet from the feed end: 45 m spans, coils of 20 ft opened in their middle 10 ft, and a little sag. */
const asDrawn = [atPole(1, 1000), at(1, "markBefore", 1156), at(1, "markAfter", 1166), atPole(4, 1483)];

const sheath = (rows: readonly ReturnType<typeof readingRow>[], route: Route = smallRoute()) =>
  cableSheath(openPlant(withRows(route, "reading", rows)), "cable-1");

describe("marks read along a cable", () => {
  test("marks as drawn come out as drawn, and the reel's remainder is told", () => {
    const { sections, doubted, remainderM } = sheath(asDrawn);
    expect(sections.map((one) => [one.from, one.to, one.isAsDrawn])).toEqual([
      ["P1", "T1 before the opening", true],
      ["T1 before the opening", "T1 after the opening", true],
      ["T1 after the opening", "P4", true],
    ]);
    expect(doubted).toEqual([]);
    expect(remainderM).toBeCloseTo(6096 - 483 * markUnitM(openPlant(smallRoute())), 6);
  });

  test("two digits exchanged are pointed out with the figure they should be", () => {
    const { doubted } = sheath([...asDrawn.slice(0, 2), at(1, "markAfter", 1616), atPole(4, 1483)]);
    expect(doubted).toMatchObject([{ place: "T1 after the opening", figure: 1616, perhaps: 1166 }]);
  });

  test("without a mark at the far end nobody can tell what is left of the reel", () => {
    expect(sheath(asDrawn.slice(0, 3)).remainderM).toBeNull();
  });

  test("with no reading there is no section", () => {
    expect(sheath([])).toMatchObject({ counts: null, sections: [], usedM: 0, remainderM: null });
  });
});
