import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { poleRun } from "../../core/layout/poleRun.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { runLayout } from "../../core/layout/runLayout.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { portCounts, terminalPlace } from "../../core/plant/terminalView.ts";
import { strungTown } from "../fixtures/layout/townRoute.ts";
import { changed } from "../fixtures/route/buildRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";

const wishes = fc.record({
  town: fc.record({
    poleCount: fc.integer({ min: 5, max: 10 }),
    spanM: fc.integer({ min: 20, max: 50 }),
    unitsPerSpan: fc.integer({ min: 2, max: 6 }),
    seed: fc.integer({ min: 0, max: 1e6 }),
    settings: fc.constant({ dropReachM: 80, sparePortCount: 1 }),
  }),
  dear: fc.integer({ min: 200, max: 900 }),
  from: fc.integer({ min: 1, max: 4 }),
  length: fc.integer({ min: 0, max: 4 }),
});

/** The layout at hand, and another that dear small terminals drive to fewer, larger ones. */
function two(town: Parameters<typeof strungTown>[0], dear: number) {
  const bare = strungTown(town);
  const first = runLayout(bare);
  if (!first.ok) throw new Error(first.fault.what);
  const present = routeWith(bare, first.value.rows);
  const small = [...bare.terminalModel.values()].filter((one) => one.portCount < 12);
  const priced = small.reduce(
    (route, one) => changed(route, "terminalModel", one.id, { cost: one.cost + dear }),
    present,
  );
  const other = runLayout(priced);
  if (!other.ok) throw new Error(other.fault.what);
  return { present, other: other.value };
}

function mixed(present: Route, other: ReturnType<typeof two>["other"], poleIds: readonly string[]): Route {
  const layout = runLayout(present, { mix: { other: other.placed, poleIds } });
  if (!layout.ok) throw new Error(layout.fault.what);
  return routeWith(present, layout.value.rows);
}

const hung = (route: Route) => {
  const plant = openPlant(route);
  return [...route.terminal.values()].map((one) => ({
    poleId: terminalPlace(plant, one.id).poleId,
    text: `${one.spanId} ${one.offsetM.toFixed(3)}`,
  }));
};

describe("another layout taken along a run of poles", () => {
  test("with no pole chosen leaves every terminal, drop and fiber as it is", () => {
    fc.assert(
      fc.property(wishes, ({ town, dear }) => {
        const { present, other } = two(town, dear);
        const after = mixed(present, other, []);
        for (const table of ["terminal", "drop", "fiberUse", "splitter", "slack"] as const)
          expect([...after[table].values()]).toEqual([...present[table].values()]);
        expect(after.layoutRecord.size).toBe(0);
      }),
      { numRuns: 20, seed: 3 },
    );
  });

  test("with every pole chosen hangs the other layout's terminals, and serves whom it serves", () => {
    let whole = 0;
    fc.assert(
      fc.property(wishes, ({ town, dear }) => {
        const { present, other } = two(town, dear);
        // whom the other leaves out the mixture may still serve
        if (other.unserved.length > 0) return;
        whole += 1;
        const after = mixed(present, other, [...present.pole.keys()]);
        const wanted = other.placed.map(({ site }) => `${site.spanId} ${site.offsetM.toFixed(3)}`);
        expect(
          hung(after)
            .map((one) => one.text)
            .sort(),
        ).toEqual(wanted.sort());
        expect(after.drop.size).toBe(other.placed.reduce((sum, one) => sum + one.units.length, 0));
      }),
      { numRuns: 25, seed: 3 },
    );
    expect(whole).toBeGreaterThan(8);
  });

  test("serves everyone it could before, once, keeps the spare ports, and hangs the other's terminals at the run", () => {
    let differing = 0;
    fc.assert(
      fc.property(wishes, ({ town, dear, from, length }) => {
        const { present, other } = two(town, dear);
        const run = poleRun(openPlant(present), [`M-${from}`, `M-${Math.min(town.poleCount, from + length)}`]);
        expect(run).toHaveLength(Math.min(town.poleCount, from + length) - from + 1);
        const after = mixed(present, other, run);
        const served = [...after.drop.values()].map((one) => one.livingUnitId);
        expect(new Set(served).size).toBe(served.length);
        expect(served.length + after.unservedUnit.size).toBe(after.livingUnit.size);
        const plant = openPlant(after);
        for (const id of after.terminal.keys()) expect(portCounts(plant, id).spare).toBeGreaterThanOrEqual(1);
        const here = new Set(hung(after).map((one) => one.text));
        for (const { site } of other.placed)
          if (run.includes(site.poleId)) expect(here).toContain(`${site.spanId} ${site.offsetM.toFixed(3)}`);
        const faults = [
          "drop-over-reach",
          "port-used-twice",
          "hanging-overlap",
          "fiber-used-twice",
          "splitter-without-fiber",
        ];
        expect(findingsOf(after).filter((one) => faults.includes(one.ruleId))).toEqual([]);
        if (JSON.stringify(hung(after)) !== JSON.stringify(hung(present))) differing += 1;
      }),
      { numRuns: 40, seed: 3 },
    );
    expect(differing).toBeGreaterThan(10);
  });
});
