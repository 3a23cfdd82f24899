import { describe, expect, it } from "vitest";
import type { RowChange } from "../../../core/model/rowChange.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { openChecker } from "../../../core/rules/checker.ts";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { rowOf } from "../../fixtures/route/faultyRoutes.ts";

const before = rowOf(smallRoute(), "terminal", "terminal-1");

function moved(offsetM: number) {
  const route = changed(smallRoute(), "terminal", "terminal-1", { offsetM });
  const rows: RowChange[] = [{ table: "terminal", id: "terminal-1", before, after: { ...before, offsetM } }];
  return { route, rows };
}

describe("the checker", () => {
  it("finds what an edit did wrong", () => {
    const checker = openChecker(openPlant(smallRoute()));
    const { route, rows } = moved(1.5);
    const { found, gone } = checker.advance(route, rows);
    expect(found.map((one) => one.ruleId)).toEqual(["terminal-standoff"]);
    expect(gone).toEqual([]);
    expect(checker.findings()).toEqual(found);
  });

  it("tells what an edit mended", () => {
    const { route, rows } = moved(1.5);
    const checker = openChecker(openPlant(route));
    const back: RowChange[] = rows.map((row) => ({ ...row, before: row.after, after: row.before }) as RowChange); // both of one table
    expect(checker.advance(smallRoute(), back).gone).toEqual(["terminal-standoff pole-2 terminal-1"]);
    expect(checker.findings()).toEqual([]);
  });

  it("lets go of what was found about a row that is gone", () => {
    const drop = { ...rowOf(smallRoute(), "drop", "drop-1"), port: 9 };
    const route = changed(smallRoute(), "drop", "drop-1", { port: 9 });
    const checker = openChecker(openPlant(route));
    expect(checker.findings().map((one) => one.ruleId)).toContain("port-beyond-model");
    checker.advance(without(route, "drop", "drop-1"), [{ table: "drop", id: "drop-1", before: drop, after: null }]);
    expect(checker.findings().map((one) => one.ruleId)).toEqual(["unit-without-port"]);
  });

  it("asks nothing again when only the units are switched, and asks about what hangs when the standard distance is another", () => {
    const checker = openChecker(openPlant(smallRoute()));
    const set = (values: object) => {
      const [former] = smallRoute().settings.values();
      if (!former) throw new Error("the route has no settings");
      const after = { ...former, ...values };
      const row: RowChange = { table: "settings", id: former.id, before: former, after };
      return checker.advance(changed(smallRoute(), "settings", former.id, values), [row]);
    };
    expect(set({ unitSystem: "metric" }).askedCount).toBe(1);
    const { askedCount, found } = set({ unitSystem: "us", standoffM: 1.2 });
    expect(askedCount).toBeGreaterThan(1);
    expect(found.map((one) => one.ruleId)).toContain("terminal-standoff");
  });

  it("asks only the rules it was given", () => {
    const { route } = moved(1.5);
    expect(openChecker(openPlant(route), []).findings()).toEqual([]);
  });
});
