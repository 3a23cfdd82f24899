import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tapLossDb } from "../../core/fiber/splitterLoss.ts";
import { hubLegCount, hubLossDb } from "../../core/layout/giveFeeds.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { runLayout } from "../../core/layout/runLayout.ts";
import type { Route } from "../../core/model/route.ts";
import { sheathToM, terminalsAlong } from "../../core/plant/cablePath.ts";
import { dropCutM } from "../../core/plant/dropView.ts";
import { hungSlackM } from "../../core/plant/hungSlack.ts";
import { openPlant, type Plant } from "../../core/plant/plant.ts";
import { bareTown, strung } from "../fixtures/layout/townRoute.ts";
import { withRows } from "../fixtures/route/buildRoute.ts";
import { splitterTypes, terminalModels } from "../fixtures/route/catalogueFixture.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";

const shares = [0.1, 0.2, 0.3];
const four = firstOf(splitterTypes);
const plain = firstOf(terminalModels);
const taps = shares.map((share) => ({
  ...four,
  id: `tap-${share}`,
  name: `tap ${share}`,
  maxLossDb: tapLossDb(share, 0.5) + four.maxLossDb,
  typicalLossDb: tapLossDb(share, 0.2) + four.typicalLossDb,
  throughLossDb: tapLossDb(1 - share, 0.5),
}));
const tapModels = taps.map((tap) => ({
  ...plain,
  id: `terminal-${tap.id}`,
  name: tap.name,
  splitterTypeId: tap.id,
  cost: plain.cost + 25,
}));

const town = fc.record({
  poleCount: fc.integer({ min: 3, max: 8 }),
  laterals: fc.array(fc.record({ atPole: fc.integer({ min: 1, max: 3 }), poleCount: fc.integer({ min: 1, max: 4 }) }), {
    maxLength: 1,
  }),
  unitsPerSpan: fc.integer({ min: 1, max: 4 }),
  seed: fc.integer({ min: 0, max: 1e6 }),
  settings: fc.record({
    sparePortCount: fc.integer({ min: 0, max: 1 }),
    dropReachM: fc.integer({ min: 40, max: 80 }),
    marginDb: fc.constantFrom(0, 3, 5, 7),
    deadLength: fc.constant("chained" as const),
  }),
});

function holds(property: (done: Route, start: Route) => void): void {
  fc.assert(
    fc.property(town, (wishes) => {
      const start = strung(withRows(withRows(bareTown(wishes), "splitterType", taps), "terminalModel", tapModels));
      property(laidOut(start), start);
    }),
    { numRuns: 40, seed: 5 },
  );
}

function laidOut(route: Route): Route {
  const layout = runLayout(route);
  if (!layout.ok) throw new Error(layout.fault.what);
  return routeWith(route, layout.value.rows);
}

describe("a layout that chains taps", () => {
  test("leaves nothing for the rules about fibers and splits to find, and no terminal of a chain in too little light", () => {
    const quiet = [
      "dead-length-reused",
      "feed-missing",
      "feed-over-split",
      "fiber-cut-upstream",
      "fiber-used-twice",
      "port-without-light",
      "split-over-class",
      "splitter-without-fiber",
    ];
    holds((route) => {
      const found = findingsOf(route);
      expect(found.filter((one) => quiet.includes(one.ruleId))).toEqual([]);
      const chained = chainsOf(openPlant(route))
        .filter((one) => one.length > 1)
        .flat();
      const weak = found.filter((one) => one.ruleId === "light-too-weak").flatMap((one) => one.subjects);
      const atTerminals = weak.flatMap(({ table, id }) =>
        table === "drop" ? (route.drop.get(id)?.terminalId ?? []) : [],
      );
      expect(atTerminals.filter((id) => chained.includes(id))).toEqual([]);
    });
  });

  test("changes nothing when it is laid out once more", () => {
    holds((route) => {
      const again = runLayout(route);
      expect(again.ok && again.value.rows).toEqual([]);
    });
  });

  test("ends every chain with a terminal that keeps all that arrives", () => {
    holds((route) => {
      const plant = openPlant(route);
      for (const chain of chainsOf(plant)) {
        const passesOn = chain.map((id) => throughDb(plant, id) > 0);
        expect(passesOn).toEqual(chain.map((_, index) => index < chain.length - 1));
      }
    });
  });

  test("takes as few fibers of each cable as any way to cut its terminals into chains", () => {
    holds((route) => {
      const plant = openPlant(route);
      for (const cableId of plant.all("cable")) {
        const terminals = terminalsAlong(plant, cableId);
        const used = chainsOf(plant).filter(([id]) => id !== undefined && terminals.includes(id));
        expect(used.length).toBe(fewestChains(plant, terminals));
      }
    });
  });

  test("hangs the same terminals with a fiber each where the hub has no light to tell by", () => {
    holds((_, start) => {
      const plant = openPlant(laidOut({ ...start, feed: new Map() }));
      expect(chainsOf(plant).filter((one) => one.length > 1)).toEqual([]);
    });
  });
});

test("a pinned chain keeps its fiber while the rest is laid out anew", () => {
  holds((route) => {
    const chain = chainsOf(openPlant(route)).find((one) => one.length > 1);
    if (!chain) return;
    const terminal = new Map(route.terminal);
    for (const id of chain) {
      const row = terminal.get(id);
      if (row) terminal.set(id, { ...row, pinned: true });
    }
    const after = openPlant(laidOut({ ...route, terminal }));
    expect(chainsOf(after)).toContainEqual(chain);
  });
});

/** Terminals fiber by fiber, each from the feed end. */
function chainsOf(plant: Plant): readonly (readonly string[])[] {
  const chains = new Map<string, string[]>();
  for (const cableId of plant.all("cable"))
    for (const id of terminalsAlong(plant, cableId)) {
      const [useId = ""] = plant.where("fiberUse", "terminalId", id);
      const key = `${cableId} ${plant.rowOf("fiberUse", useId).fiber}`;
      chains.set(key, [...(chains.get(key) ?? []), id]);
    }
  return [...chains.values()];
}

/** By trying every way to cut. */
function fewestChains(plant: Plant, terminals: readonly string[]): number {
  if (terminals.length === 0) return 0;
  const cuts = terminals.map((_, index) => index + 1).filter((count) => isLit(plant, terminals.slice(0, count)));
  return 1 + Math.min(...cuts.map((count) => fewestChains(plant, terminals.slice(count))));
}

/** Whether some taps light all terminals of a chain through the worst output of the hub; a terminal alone is always taken. */
function isLit(plant: Plant, chain: readonly string[]): boolean {
  if (chain.length === 1) return true;
  const legCount = 4 * chain.length;
  const { marginDb } = plant.settings();
  const { maxLossDb, maxSplitCount, upDbPerKm } = plant.rowOf("opticalClass", "class-b-plus");
  if (legCount > maxSplitCount) return false;
  const upstream = plant
    .all("feed")
    .map((id) => plant.rowOf("feed", id))
    .filter((one) => one.hubSplitCount * legCount <= maxSplitCount)
    .map((one) => one.upstreamLossDb);
  const leftDb = maxLossDb - marginDb - Math.max(...upstream, hubLossDb(plant, hubLegCount(maxSplitCount, legCount)));
  return choices(chain.length - 1).some((choice) => worstDb(plant, chain, choice, upDbPerKm) <= leftDb + 1e-9);
}

function worstDb(plant: Plant, chain: readonly string[], choice: readonly number[], dbPerKm: number): number {
  let passedDb = 0;
  const losses = chain.map((id, index) => {
    const tap = taps[choice[index] ?? -1];
    const { fiberM, spliceCount } = wayOf(plant, plant.rowOf("terminal", id));
    const { spliceLossDb, connectionLossDb } = plant.settings();
    const dropM = Math.max(...plant.where("drop", "terminalId", id).map((drop) => dropCutM(plant, drop)));
    const hereDb =
      (fiberM / 1000) * dbPerKm + (spliceCount + index) * spliceLossDb + 2 * connectionLossDb + (dropM / 1000) * 0.4;
    const lossDb = passedDb + hereDb + (tap ?? four).maxLossDb;
    passedDb += tap?.throughLossDb ?? 0;
    return lossDb;
  });
  return Math.max(...losses);
}

function wayOf(
  plant: Plant,
  place: { cableId: string; spanId: string; offsetM: number },
): { fiberM: number; spliceCount: number } {
  const cable = plant.rowOf("cable", place.cableId);
  const sheathM = sheathToM(plant, place.cableId, place.spanId, place.offsetM) ?? 0;
  const hungM = sheathM + hungSlackM(plant, place.cableId, place.spanId, place.offsetM);
  const fiberM = hungM * (1 + plant.rowOf("cableType", cable.cableTypeId).fiberExcessFrac);
  if (cable.fromClosureId === null) return { fiberM, spliceCount: 1 };
  const parent = wayOf(plant, plant.rowOf("closure", cable.fromClosureId));
  return { fiberM: parent.fiberM + fiberM, spliceCount: parent.spliceCount + 1 };
}

function throughDb(plant: Plant, terminalId: string): number {
  const [id = ""] = plant.where("splitter", "terminalId", terminalId);
  return plant.rowOf("splitterType", plant.rowOf("splitter", id).splitterTypeId).throughLossDb;
}

/** Every row of so many taps, by their places in the list. */
function choices(count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return choices(count - 1).flatMap((rest) => taps.map((_, index) => [...rest, index]));
}

function firstOf<T>([first]: readonly T[]): T {
  if (first === undefined) throw new Error("the fixture has no terminal of 4 ports");
  return first;
}
