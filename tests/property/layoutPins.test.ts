import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyChange } from "../../core/edits/change.ts";
import { findCommand } from "../../core/edits/register.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { runLayout } from "../../core/layout/runLayout.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { terminalPlace } from "../../core/plant/terminalView.ts";
import { strungTown } from "../fixtures/layout/townRoute.ts";

const wishes = fc.record({
  town: fc.record({
    poleCount: fc.integer({ min: 4, max: 9 }),
    spanM: fc.integer({ min: 20, max: 50 }),
    unitsPerSpan: fc.integer({ min: 2, max: 7 }),
    seed: fc.integer({ min: 0, max: 1e6 }),
  }),
  pinEvery: fc.integer({ min: 2, max: 5 }),
  unitEvery: fc.integer({ min: 3, max: 9 }),
  barEvery: fc.integer({ min: 2, max: 4 }),
  sparePortCount: fc.integer({ min: 0, max: 2 }),
});

function done(route: Route, command: string, input: object): Route {
  const asked = findCommand(command)?.ask(route, input);
  if (!asked?.ok) throw new Error(`${command} was refused`);
  const after = applyChange(route, asked.value);
  if (!after.ok) throw new Error(after.fault.what);
  return after.value;
}

function laid(route: Route): Route {
  const layout = runLayout(route);
  if (!layout.ok) throw new Error(layout.fault.what);
  return routeWith(route, layout.value.rows);
}

const nth = <T>(rows: Iterable<T>, every: number): T[] => [...rows].filter((_, index) => index % every === 0);

describe("what a person decided by the commands of the window, then another standard and a new layout", () => {
  test("stays: pinned terminals hang where they hung, pinned living units keep their ports, closed poles get no terminal", () => {
    let [kept, closed] = [0, 0];
    fc.assert(
      fc.property(wishes, ({ town, pinEvery, unitEvery, barEvery, sparePortCount }) => {
        let route = laid(strungTown(town));
        const terminals = nth(route.terminal.keys(), pinEvery);
        const drops = nth(route.drop.keys(), unitEvery);
        const poles = nth(route.pole.keys(), barEvery);
        for (const terminalId of terminals) route = done(route, "terminal.pin", { terminalId, pinned: true });
        for (const dropId of drops) route = done(route, "drop.pin", { dropId, pinned: true });
        for (const id of poles)
          route = done(route, "row.set", { table: "pole", id, values: { terminalAllowed: false } });
        const before = done(route, "settings.set", { values: { sparePortCount } });
        const after = laid(before);
        for (const id of terminals) expect(after.terminal.get(id)).toEqual(before.terminal.get(id));
        for (const id of drops) {
          expect(after.drop.get(id)).toEqual(before.drop.get(id));
          const holder = before.drop.get(id)?.terminalId ?? "";
          expect(after.terminal.get(holder)).toEqual(before.terminal.get(holder));
        }
        const stays = new Set([...terminals, ...drops.map((id) => before.drop.get(id)?.terminalId ?? "")]);
        const plant = openPlant(after);
        for (const id of after.terminal.keys()) {
          if (stays.has(id)) continue;
          expect(poles).not.toContain(terminalPlace(plant, id).poleId);
        }
        kept += terminals.length + drops.length;
        closed += poles.length;
      }),
      { numRuns: 40, seed: 5 },
    );
    expect(Math.min(kept, closed)).toBeGreaterThan(80);
  });

  test("let go again, it leaves no trace: the layout is the one there was", () => {
    fc.assert(
      fc.property(wishes, ({ town, pinEvery, barEvery }) => {
        const first = laid(strungTown(town));
        let route = first;
        const terminals = nth(route.terminal.keys(), pinEvery);
        const poles = nth(route.pole.keys(), barEvery);
        for (const terminalId of terminals) route = done(route, "terminal.pin", { terminalId, pinned: true });
        for (const id of poles)
          route = done(route, "row.set", { table: "pole", id, values: { terminalAllowed: false } });
        route = laid(route);
        for (const terminalId of terminals) route = done(route, "terminal.pin", { terminalId, pinned: false });
        for (const id of poles)
          route = done(route, "row.set", { table: "pole", id, values: { terminalAllowed: true } });
        const again = laid(route);
        const hung = (one: Route) =>
          [...one.terminal.values()].map(({ spanId, offsetM }) => `${spanId} ${offsetM}`).sort();
        expect(hung(again)).toEqual(hung(first));
      }),
      { numRuns: 15, seed: 5 },
    );
  });
});
