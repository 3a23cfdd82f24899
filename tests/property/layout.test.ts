import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { routeWith } from "../../core/layout/rowSet.ts";
import { type Layout, runLayout } from "../../core/layout/runLayout.ts";
import { type Route, settingsOf } from "../../core/model/route.ts";
import { cablesInSpan } from "../../core/plant/cablePath.ts";
import { dropRunM } from "../../core/plant/dropView.ts";
import { fiberUseStationM } from "../../core/plant/fiberTrace.ts";
import { tubeOf } from "../../core/plant/fiberView.ts";
import { type Point, planeDistanceM, pointOnSpan } from "../../core/plant/geometry.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { portCounts, splittersOf } from "../../core/plant/terminalView.ts";
import { bareTown, strung, type TownWishes } from "../fixtures/layout/townRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";

const town: fc.Arbitrary<TownWishes> = fc.record({
  poleCount: fc.integer({ min: 3, max: 12 }),
  spanM: fc.integer({ min: 5, max: 60 }),
  laterals: fc.array(fc.record({ atPole: fc.integer({ min: 1, max: 3 }), poleCount: fc.integer({ min: 1, max: 5 }) }), {
    maxLength: 2,
  }),
  unitsPerSpan: fc.integer({ min: 0, max: 9 }),
  seed: fc.integer({ min: 0, max: 1e6 }),
  settings: fc.record({
    sparePortCount: fc.integer({ min: 0, max: 3 }),
    spareFiberPerTubeCount: fc.integer({ min: 0, max: 3 }),
    dropReachM: fc.integer({ min: 15, max: 95 }),
  }),
});

/** Rules a fresh layout must leave quiet: all that the layout itself decides. */
const quiet = [
  "coil-away-from-terminal",
  "coil-too-short",
  "drop-over-reach",
  "feed-missing",
  "feed-over-split",
  "fiber-beyond-cable",
  "fiber-cut-upstream",
  "fiber-used-twice",
  "hanging-overlap",
  "lateral-not-spliced",
  "port-beyond-model",
  "port-used-twice",
  "port-without-light",
  "spare-fibers-in-tube",
  "spare-ports",
  "split-over-class",
  "splitter-fed-twice",
  "splitter-without-fiber",
  "terminal-in-climbing-space",
  "terminal-name-repeated",
  "terminal-not-allowed",
  "terminal-off-cable",
  "terminal-span-too-short",
  "terminal-standoff",
  "terminal-without-coil",
  "unit-with-two-drops",
];

function laidOut(route: Route): { route: Route; layout: Layout } {
  const layout = runLayout(route);
  if (!layout.ok) throw new Error(layout.fault.what);
  return { route: routeWith(route, layout.value.rows), layout: layout.value };
}

function holds(property: (start: Route, done: { route: Route; layout: Layout }) => void, numRuns = 40): void {
  fc.assert(
    fc.property(town, (wishes) => {
      const start = strung(bareTown(wishes));
      property(start, laidOut(start));
    }),
    { numRuns, seed: 11 },
  );
}

describe("a layout of any town", () => {
  test("leaves nothing for the rules about placing, ports, fibers and coils to find", () => {
    holds((_, { route }) => {
      const found = findingsOf(route).filter((one) => quiet.includes(one.ruleId));
      expect(found.map((one) => `${one.ruleId}: ${one.message}`)).toEqual([]);
    }, 25);
  });

  test("serves every unit once or says why not", () => {
    holds((_, { route, layout }) => {
      const served = [...route.drop.values()].map((one) => one.livingUnitId);
      const left = layout.unserved.map((one) => one.livingUnitId);
      expect([...served, ...left].sort()).toEqual([...route.livingUnit.keys()].sort());
    });
  });

  test("serves nobody beyond reach, no port twice, and keeps the spare ports", () => {
    holds((_, { route }) => {
      const plant = openPlant(route);
      const { dropReachM, sparePortCount } = settingsOf(route);
      for (const id of route.drop.keys()) expect(dropRunM(plant, id)).toBeLessThanOrEqual(dropReachM);
      const ports = [...route.drop.values()].map((one) => `${one.terminalId} ${one.port}`);
      expect(new Set(ports).size).toBe(ports.length);
      for (const id of route.terminal.keys())
        expect(portCounts(plant, id).spare).toBeGreaterThanOrEqual(sparePortCount);
    });
  });

  test("uses no fiber twice, keeps the spares of each tube and gives a terminal fibers of one tube", () => {
    holds((_, { route }) => {
      const plant = openPlant(route);
      const { spareFiberPerTubeCount } = settingsOf(route);
      const uses = [...route.fiberUse.values()];
      expect(new Set(uses.map((one) => `${one.cableId} ${one.fiber}`)).size).toBe(uses.length);
      for (const one of uses)
        expect(tubeOf(plant, one.cableId, one.fiber).place).toBeLessThanOrEqual(12 - spareFiberPerTubeCount);
      for (const id of route.terminal.keys()) {
        const own = uses.filter((one) => one.terminalId === id);
        expect(own).toHaveLength(splittersOf(plant, id).length);
        expect(new Set(own.map((one) => tubeOf(plant, one.cableId, one.fiber).tube)).size).toBe(1);
      }
    });
  });

  test("gives the lowest fibers to the far end", () => {
    holds((_, { route }) => {
      const plant = openPlant(route);
      for (const cableId of route.cable.keys()) {
        const stations = [...route.fiberUse.values()]
          .filter((one) => one.cableId === cableId)
          .sort((a, b) => a.fiber - b.fiber)
          .map((one) => fiberUseStationM(plant, one.id) ?? Number.NaN);
        expect(stations).toEqual(stations.toSorted((a, b) => b - a));
      }
    });
  });

  test("changes nothing when it is run on its own result", () => {
    holds((_, { route }) => expect(laidOut(route).layout.rows).toEqual([]));
  });

  test("says the same whatever order the rows come in", () => {
    holds((start, { route }) => {
      const turned = { ...start, livingUnit: backwards(start.livingUnit), span: backwards(start.span) };
      expect(byId(laidOut(turned).route)).toEqual(byId(route));
    });
  });

  test("costs as much for the town's mirror image", () => {
    holds((start, { layout }) => {
      const mirrored = { ...start, pole: northDown(start.pole), livingUnit: northDown(start.livingUnit) };
      expect(laidOut(mirrored).layout.summary.cost).toBeCloseTo(layout.summary.cost, 6);
    });
  });

  test("keeps pinned terminals and drops as they are", () => {
    holds((_, { route }) => {
      const pinned = new Map([...route.terminal].map(([id, one], index) => [id, { ...one, pinned: index % 3 === 0 }]));
      const drop = new Map([...route.drop].map(([id, one], index) => [id, { ...one, pinned: index % 5 === 0 }]));
      const moved = new Map(
        [...route.livingUnit].map(([id, one], n) => [id, { ...one, eastM: one.eastM + (n % 7) - 3 }]),
      );
      const again = laidOut({ ...route, terminal: pinned, drop, livingUnit: moved });
      for (const one of pinned.values()) if (one.pinned) expect(again.route.terminal.get(one.id)).toEqual(one);
      for (const one of drop.values()) if (one.pinned) expect(again.route.drop.get(one.id)).toEqual(one);
      expect(laidOut(again.route).layout.rows).toEqual([]);
    });
  });

  test("is never dearer than giving each unit in turn the nearest pole side with room", () => {
    let compared = 0;
    holds((start, { layout }) => {
      const cost = costByNearest(start);
      if (cost === null || layout.unserved.length > 0) return;
      compared += 1;
      expect(layout.summary.cost).toBeLessThanOrEqual(cost + 1e-6);
      expect(layout.summary.costBound).toBeLessThanOrEqual(layout.summary.cost + 1e-6);
    });
    expect(compared).toBeGreaterThan(10);
  });

  test("leaves out no unit that some layout could serve along with the others", () => {
    holds((start, { route, layout }) => {
      const served = route.livingUnit.size - layout.unserved.length;
      expect(served).toBe(mostServable(start));
    });
  });
});

/** What people do by hand: unit after unit to the nearest side with room, then the cheapest terminals; null where that fails. */
function costByNearest(route: Route): number | null {
  const { dropReachM, sparePortCount, dropAllowanceM, dropTypeId } = settingsOf(route);
  const price = route.dropType.get(dropTypeId)?.costPerM ?? Number.NaN;
  const sides = poleSides(route).map((at) => ({ at, load: 0 }));
  let cost = 0;
  for (const unit of route.livingUnit.values()) {
    const open = sides.filter((one) => one.load < 16 - sparePortCount && planeDistanceM(one.at, unit) <= dropReachM);
    const nearest = open.sort((a, b) => planeDistanceM(a.at, unit) - planeDistanceM(b.at, unit))[0];
    if (!nearest) return null;
    nearest.load += 1;
    cost += price * (planeDistanceM(nearest.at, unit) + dropAllowanceM);
  }
  const models = [...route.terminalModel.values()];
  const modelCost = (load: number) =>
    Math.min(...models.filter((one) => one.portCount - sparePortCount >= load).map((one) => one.cost));
  return sides.reduce((sum, one) => sum + (one.load > 0 ? modelCost(one.load) : 0), cost);
}

/** Units the pole sides could serve at most with the largest terminal on each: augmenting paths over sides found anew here. */
function mostServable(route: Route): number {
  const { dropReachM, sparePortCount } = settingsOf(route);
  const sides = poleSides(route);
  const reach = [...route.livingUnit.values()].map((unit) =>
    sides.flatMap((side, index) => (planeDistanceM(side, unit) <= dropReachM ? [index] : [])),
  );
  const heldBy: number[][] = sides.map(() => []);
  const seat = (unit: number, seen: Set<number>): boolean =>
    (reach[unit] ?? []).some((side) => {
      const held = heldBy[side];
      if (!held || seen.has(side)) return false;
      seen.add(side);
      if (held.length < 16 - sparePortCount) return held.push(unit) > 0;
      const mover = held.findIndex((one) => seat(one, seen));
      if (mover === -1) return false;
      held[mover] = unit;
      return true;
    });
  return reach.filter((_, unit) => seat(unit, new Set())).length;
}

/** Where a terminal may hang, worked out without the layout. */
function poleSides(route: Route): Point[] {
  const plant = openPlant(route);
  const { standoffM, minSpanM } = settingsOf(route);
  return [...route.span.values()]
    .filter((one) => one.lengthM >= minSpanM && cablesInSpan(plant, one.id).length > 0)
    .flatMap((one) =>
      [standoffM, one.lengthM - standoffM]
        .filter((offsetM) =>
          [...route.closure.values()].every((c) => c.spanId !== one.id || Math.abs(c.offsetM - offsetM) > 0.42),
        )
        .map((offsetM) => pointOnSpan(plant, one.id, offsetM)),
    );
}

function backwards<T>(rows: ReadonlyMap<string, T>): ReadonlyMap<string, T> {
  return new Map([...rows].reverse());
}

function northDown<T extends { readonly northM: number }>(rows: ReadonlyMap<string, T>): ReadonlyMap<string, T> {
  return new Map([...rows].map(([id, row]) => [id, { ...row, northM: -row.northM }]));
}

function byId(route: Route): object {
  return Object.fromEntries(
    Object.entries(route).map(([name, rows]) => [name, [...rows.values()].sort((a, b) => (a.id < b.id ? -1 : 1))]),
  );
}
