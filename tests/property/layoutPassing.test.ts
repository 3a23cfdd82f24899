import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { routeWith } from "../../core/layout/rowSet.ts";
import { runLayout } from "../../core/layout/runLayout.ts";
import type { Route } from "../../core/model/route.ts";
import type { DropPassing } from "../../core/model/tables.ts";
import { forbiddenOver } from "../../core/plant/dropPassing.ts";
import { planeDistanceM } from "../../core/plant/geometry.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { terminalHang } from "../../core/plant/terminalView.ts";
import { bareTown, strung } from "../fixtures/layout/townRoute.ts";
import { withRows } from "../fixtures/route/buildRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";
import { passing } from "../fixtures/route/faultyRoutes.ts";

const town = fc.record({
  poleCount: fc.integer({ min: 4, max: 10 }),
  spanM: fc.integer({ min: 20, max: 50 }),
  unitsPerSpan: fc.integer({ min: 1, max: 6 }),
  seed: fc.integer({ min: 0, max: 1e6 }),
  settings: fc.record({ dropReachM: fc.integer({ min: 20, max: 80 }), sparePortCount: fc.constant(1) }),
});

/** A town along the east with a track across its second span, north to south, and a road 12 m before every third house. */
function crossed(wishes: Parameters<typeof bareTown>[0], rules: readonly DropPassing[]): Route {
  const bare = bareTown(wishes);
  const track = { id: "track", spanId: "span-2", name: "Branch line", surface: "rail" as const };
  const roads = [...bare.livingUnit.keys()]
    .filter((_, index) => index % 3 === 0)
    .map((id) => ({ id: `before-${id}`, livingUnitId: id, name: "", surface: "road" as const }));
  const level = { widthM: 6, surfaceM: null };
  const crossings = withRows(bare, "crossing", [{ ...track, ...level, offsetM: (wishes.spanM ?? 40) / 2 }]);
  const before = roads.map((one) => ({ ...one, ...level, fromUnitM: 12 }));
  return strung(withRows(crossings, "dropCrossing", before, "dropPassing", rules));
}

function laid(route: Route) {
  const layout = runLayout(route);
  if (!layout.ok) throw new Error(layout.fault.what);
  return { ...layout.value, route: routeWith(route, layout.value.rows) };
}

const holds = (property: (wishes: Parameters<typeof bareTown>[0]) => void) =>
  fc.assert(fc.property(town, property), { numRuns: 40, seed: 7 });

describe("a layout where some ways are closed to drops", () => {
  test("lays no drop there, serves whom it can, and names who is left for want of a way", () => {
    let leftForWay = 0;
    holds((wishes) => {
      const { route, unserved } = laid(
        crossed(wishes, [passing("rail", "forbidden", 0), passing("road", "forbidden", 0)]),
      );
      const plant = openPlant(route);
      for (const { terminalId, livingUnitId } of route.drop.values())
        expect(
          forbiddenOver(plant, terminalHang(plant, terminalId), plant.rowOf("livingUnit", livingUnitId)),
        ).toBeNull();
      expect(findingsOf(route, "drop-over-forbidden")).toEqual([]);
      const served = new Set([...route.drop.values()].map((one) => one.livingUnitId));
      expect(served.size + unserved.length).toBe(route.livingUnit.size);
      leftForWay += unserved.filter((one) => one.kind === "crossing").length;
    });
    expect(leftForWay).toBeGreaterThan(10);
  });

  test("keeps every drop on its own side of a track, seen on the map alone", () => {
    holds((wishes) => {
      const { route } = laid(crossed(wishes, [passing("rail", "forbidden", 0)]));
      const plant = openPlant(route);
      const trackM = 1.5 * (wishes.spanM ?? 40);
      for (const { terminalId, livingUnitId } of route.drop.values()) {
        const unit = plant.rowOf("livingUnit", livingUnitId);
        expect(Math.sign(terminalHang(plant, terminalId).eastM - trackM)).toBe(Math.sign(unit.eastM - trackM));
      }
    });
  });

  test("costs as much with a price on a way as the same drops and the price of each that takes it, and never less than without", () => {
    holds((wishes) => {
      const free = laid(crossed(wishes, []));
      const priced = laid(crossed(wishes, [passing("rail", "allowed", 60), passing("road", "allowed", 25)]));
      expect(priced.summary.cost).toBeGreaterThanOrEqual((free.summary.costBound ?? 0) - 1e-6);
      const { route } = priced;
      const plant = openPlant(route);
      const { dropAllowanceM, dropTypeId } = plant.settings();
      const { costPerM, costEach } = plant.rowOf("dropType", dropTypeId);
      const trackM = 1.5 * (wishes.spanM ?? 40);
      let cost = 0;
      for (const one of route.terminal.values()) cost += plant.rowOf("terminalModel", one.terminalModelId).cost;
      for (const { terminalId, livingUnitId } of route.drop.values()) {
        const unit = plant.rowOf("livingUnit", livingUnitId);
        const hang = terminalHang(plant, terminalId);
        const runM = planeDistanceM(hang, unit);
        cost += costEach + costPerM * (runM + dropAllowanceM);
        if (route.dropCrossing.has(`before-${livingUnitId}`) && runM > 12) cost += 25;
        if ((hang.eastM - trackM) * (unit.eastM - trackM) < 0) cost += 60;
      }
      expect(priced.summary.cost).toBeCloseTo(cost, 6);
    });
  });
});
