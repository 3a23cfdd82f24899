import fc from "fast-check";
import { expect, test } from "vitest";
import { findCommand } from "../../core/edits/register.ts";
import { evenDrops } from "../../core/layout/evenDrops.ts";
import { routeWith, rowDifferences } from "../../core/layout/rowSet.ts";
import { runLayout } from "../../core/layout/runLayout.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { spareLitPorts } from "../../core/plant/portLight.ts";
import { portCounts, reservedPorts } from "../../core/plant/terminalView.ts";
import { strungTown } from "../fixtures/layout/townRoute.ts";
import { changed } from "../fixtures/route/buildRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";

const wishes = fc.record({
  poleCount: fc.integer({ min: 3, max: 7 }),
  spanM: fc.integer({ min: 20, max: 45 }),
  unitsPerSpan: fc.integer({ min: 3, max: 8 }),
  seed: fc.integer({ min: 0, max: 1e6 }),
});
/** Of every third terminal as many ports as these, as far as they are free. */
const asked = fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 3, maxLength: 3 });

function laidOut(route: Route): Route {
  const layout = runLayout(route);
  if (!layout.ok) throw new Error(layout.fault.what);
  return routeWith(route, layout.value.rows);
}

/** A town laid out with spares that are set free then, some terminals of it with ports reserved. */
function reserved(given: { readonly poleCount: number }, counts: readonly number[]): Route {
  const spared = laidOut(strungTown({ ...given, settings: { sparePortCount: 3 } }));
  const route = changed(spared, "settings", "settings", { sparePortCount: 0 });
  const plant = openPlant(route);
  const terminal = new Map(
    [...route.terminal].map(([id, one], index) => {
      const { total, used } = portCounts(plant, id);
      return [id, { ...one, reservedPortCount: Math.min(counts[index % 3] ?? 0, total - used) }];
    }),
  );
  return { ...route, terminal };
}

/** Every port reserved in a route is still there, reserved by as many and without a drop. */
function expectHeld(before: Route, after: Route): number {
  const [former, plant] = [openPlant(before), openPlant(after)];
  let count = 0;
  for (const [id, { reservedPortCount }] of before.terminal) {
    if (reservedPortCount === 0) continue;
    expect(after.terminal.get(id)?.reservedPortCount).toBe(reservedPortCount);
    expect(portCounts(plant, id).reserved).toBe(reservedPortCount);
    const used = new Set(plant.where("drop", "terminalId", id).map((one) => plant.rowOf("drop", one).port));
    for (const port of reservedPorts(former, id)) {
      count += 1;
      expect(used.has(port), `port ${port} of ${id}`).toBe(false);
    }
  }
  return count;
}

/** Tries a change on many towns with reservations; most of them must hold one. */
function holds(change: (route: Route) => Route): void {
  let count = 0;
  fc.assert(
    fc.property(wishes, asked, (given, counts) => {
      const route = reserved(given, counts);
      count += expectHeld(route, change(route));
    }),
    { numRuns: 30, seed: 61 },
  );
  expect(count).toBeGreaterThan(50);
}

test("a layout gives no reserved port away and leaves the terminal where it hangs", () => {
  holds((route) => {
    const done = laidOut(route);
    for (const [id, one] of route.terminal) if (one.reservedPortCount > 0) expect(done.terminal.get(id)).toEqual(one);
    return done;
  });
});

test("evening out gives no reserved port away", () => {
  holds((route) => {
    const plant = openPlant(route);
    const moved = evenDrops(plant, [...route.terminal.keys()], 1e4);
    const before = moved.map((one) => plant.rowOf("drop", one.id));
    return routeWith(route, rowDifferences("drop", before, moved));
  });
});

test("moving a block of drops gives no reserved port away, or is refused", () => {
  holds((route) => {
    const [target] = [...route.terminal.values()].filter((one) => one.reservedPortCount > 0);
    const dropIds = [...route.drop.keys()].slice(0, 3);
    if (!target || dropIds.length === 0) return route;
    const asked = findCommand("drops.move")?.ask(route, { dropIds, terminalId: target.id });
    return asked?.ok ? routeWith(route, asked.value.rows) : route;
  });
});

test("no mend of a finding offers a reserved port", () => {
  holds((route) => {
    const plant = openPlant(route);
    for (const id of route.terminal.keys())
      for (const port of spareLitPorts(plant, id)) expect(reservedPorts(plant, id).has(port)).toBe(false);
    const [drop] = [...route.drop.values()];
    if (!drop) return route;
    const without = { ...route, drop: new Map([...route.drop].filter(([id]) => id !== drop.id)) };
    const [fix] = findingsOf(without, "unit-without-port")[0]?.fixes ?? [];
    const done = fix && findCommand(fix.command)?.ask(without, fix.input);
    if (done && !done.ok) expect(done.fault).toBeUndefined();
    return route;
  });
});

test("a layout keeps the spares beside the reserved ports where it may give ports", () => {
  fc.assert(
    fc.property(wishes, asked, (given, counts) => {
      const start = reserved(given, counts);
      const plant = openPlant(laidOut(changed(start, "settings", "settings", { sparePortCount: 1 })));
      for (const [id, one] of start.terminal)
        if (one.reservedPortCount > 0)
          expect(portCounts(plant, id).spare).toBeGreaterThanOrEqual(
            Math.min(1, portCounts(plant, id).total - one.reservedPortCount),
          );
    }),
    { numRuns: 15, seed: 62 },
  );
});
