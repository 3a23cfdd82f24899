import { expect, test } from "vitest";
import { routeWith } from "../../../core/layout/rowSet.ts";
import { runLayout } from "../../../core/layout/runLayout.ts";
import { limitedWatch } from "../../../core/placement/limitedWatch.ts";
import { layoutFacts } from "../../../core/sheets/layoutFacts.ts";
import { moneyText } from "../../../core/units/moneyText.ts";
import { strungTown } from "../../fixtures/layout/townRoute.ts";
import { changed } from "../../fixtures/route/buildRoute.ts";

const bare = strungTown({ poleCount: 12, spanM: 30, unitsPerSpan: 9 });

function laid(stepLimit: number, route = bare) {
  const search = limitedWatch(
    { stepLimit, timeLimitS: 1 },
    () => 0,
    () => false,
  );
  const layout = runLayout(route, { search });
  if (!layout.ok) throw new Error(layout.fault.what);
  return { summary: layout.value.summary, route: routeWith(route, layout.value.rows) };
}

test("the cover tells cost, bound and how far the one may lie above the other", () => {
  const { route, summary } = laid(1e6);
  const much = moneyText(summary.cost);
  expect(layoutFacts(route)).toEqual([
    ["Terminals and drops hung, at catalogue prices", much, ""],
    ["Proven: no layout costs less than", much, ""],
    ["Layout", "proven the cheapest", ""],
  ]);
  expect(layoutFacts(laid(250).route).at(-1)?.[1]).toMatch(/^at most 0\.\d+ % above the cheapest$/);
});

test("a route that was never laid out says nothing, one changed since says that", () => {
  expect(layoutFacts(bare)).toEqual([]);
  const moved = changed(laid(250).route, "terminal", "terminal-1", { offsetM: 9 });
  expect(layoutFacts(moved)).toEqual([["Layout", "changed by hand since; no bound holds", ""]]);
});

test("whom the layout leaves unserved is counted", () => {
  const far = changed(bare, "livingUnit", "unit-1", { northM: 900 });
  expect(layoutFacts(laid(250, far).route)[0]).toEqual(["Living units the layout leaves unserved", "1", ""]);
});
