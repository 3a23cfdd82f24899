import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { evenDrops } from "../../core/layout/evenDrops.ts";
import { routeWith, rowDifferences } from "../../core/layout/rowSet.ts";
import { runLayout } from "../../core/layout/runLayout.ts";
import { type Route, settingsOf } from "../../core/model/route.ts";
import { dropRunM } from "../../core/plant/dropView.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { portCounts, portsOf } from "../../core/plant/terminalView.ts";
import { strungTown } from "../fixtures/layout/townRoute.ts";
import { changed } from "../fixtures/route/buildRoute.ts";

const wishes = fc.record({
  poleCount: fc.integer({ min: 3, max: 8 }),
  spanM: fc.integer({ min: 20, max: 45 }),
  unitsPerSpan: fc.integer({ min: 4, max: 9 }),
  seed: fc.integer({ min: 0, max: 1e6 }),
});

/** A laid-out town, every seventh drop of it pinned, with the ports that were kept spare set free but for one. */
function laidOut(given: { readonly poleCount: number }): Route {
  const start = strungTown({ ...given, settings: { sparePortCount: 3 } });
  const layout = runLayout(start);
  if (!layout.ok) throw new Error(layout.fault.what);
  const route = routeWith(start, layout.value.rows);
  const drop = new Map([...route.drop].map(([id, one], index) => [id, { ...one, pinned: index % 7 === 0 }]));
  return changed({ ...route, drop }, "settings", "settings", { sparePortCount: 1 });
}

function evened(route: Route, extraDropM: number): Route {
  const plant = openPlant(route);
  const moved = evenDrops(plant, [...route.terminal.keys()], extraDropM);
  const before = moved.map((one) => plant.rowOf("drop", one.id));
  return routeWith(route, rowDifferences("drop", before, moved));
}

function runM(route: Route): number {
  const plant = openPlant(route);
  return [...route.drop.keys()].reduce((sum, id) => sum + dropRunM(plant, id), 0);
}

/** Sum over terminals of ports in use squared over ports. */
function unevenness(route: Route): number {
  const plant = openPlant(route);
  return [...route.terminal.keys()]
    .map((id) => portCounts(plant, id))
    .reduce((sum, { used, total }) => sum + used ** 2 / total, 0);
}

describe("evening out the terminals of any town", () => {
  it("never makes the drops longer than the limit says, and never leaves the fill less even", () => {
    let better = 0;
    fc.assert(
      fc.property(wishes, fc.constantFrom(0, 15, 100, 1e4), (given, extraDropM) => {
        const route = laidOut(given);
        const done = evened(route, extraDropM);
        expect(runM(done)).toBeLessThanOrEqual(runM(route) + extraDropM + 1e-5);
        const gain = unevenness(route) - unevenness(done);
        expect(gain).toBeGreaterThanOrEqual(-1e-9);
        if (gain > 1e-9) better += 1;
      }),
      { numRuns: 40, seed: 41 },
    );
    expect(better).toBeGreaterThan(10);
  });

  it("keeps pinned drops, reach, spare ports and one drop a port, and serves the same units", () => {
    fc.assert(
      fc.property(wishes, (given) => {
        const route = laidOut(given);
        const done = evened(route, 1e4);
        const plant = openPlant(done);
        const { dropReachM, sparePortCount } = settingsOf(done);
        for (const [id, before] of route.drop) {
          if (before.pinned) expect(done.drop.get(id)).toEqual(before);
          expect(dropRunM(plant, id)).toBeLessThanOrEqual(dropReachM);
          expect(done.drop.get(id)?.livingUnitId).toBe(before.livingUnitId);
        }
        for (const id of done.terminal.keys()) {
          expect(portCounts(plant, id).spare).toBeGreaterThanOrEqual(sparePortCount);
          expect(portsOf(plant, id).filter((one) => one.dropIds.length > 1)).toEqual([]);
        }
      }),
      { numRuns: 30, seed: 42 },
    );
  });

  it("is no less even for a longer limit, and leaves its own result as it is", () => {
    fc.assert(
      fc.property(wishes, (given) => {
        const route = laidOut(given);
        const measures = [0, 20, 80, 1e4].map((extraDropM) => unevenness(evened(route, extraDropM)));
        for (const [index, measure] of measures.entries())
          expect(measure).toBeLessThanOrEqual((measures[index - 1] ?? Number.POSITIVE_INFINITY) + 1e-9);
        const done = evened(route, 1e4);
        expect(unevenness(evened(done, 1e4))).toBeCloseTo(unevenness(done), 9);
      }),
      { numRuns: 20, seed: 43 },
    );
  });
});
