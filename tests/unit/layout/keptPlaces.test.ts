import { expect, it } from "vitest";
import { cablesFromHub } from "../../../core/layout/cableOrder.ts";
import { keptPlaces } from "../../../core/layout/keptPlaces.ts";
import { presentLayout } from "../../../core/layout/presentLayout.ts";
import { routeWith } from "../../../core/layout/rowSet.ts";
import { runLayout } from "../../../core/layout/runLayout.ts";
import { sitesAlong } from "../../../core/layout/sites.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { terminalHang } from "../../../core/plant/terminalView.ts";
import { bareTown, strung } from "../../fixtures/layout/townRoute.ts";

const start = strung(
  bareTown({
    poleCount: 9,
    spanM: 40,
    laterals: [{ atPole: 2, poleCount: 3 }],
    unitsPerSpan: 4,
    seed: 7,
    settings: { sparePortCount: 1, spareFiberPerTubeCount: 0, dropReachM: 60 },
  }),
);

it("who is served is kept where its terminal hangs, pinned or not; who is new is nowhere yet", () => {
  const layout = runLayout(start);
  if (!layout.ok) throw new Error(layout.fault.what);
  const laid = routeWith(start, layout.value.rows);
  const terminal = new Map([...laid.terminal].map(([id, one], index) => [id, { ...one, pinned: index % 2 === 0 }]));
  const [neighbour] = laid.livingUnit.values();
  if (!neighbour) throw new Error("the town has nobody in it");
  const newcomer = { ...neighbour, id: "newcomer" };
  const route = { ...laid, terminal, livingUnit: new Map([...laid.livingUnit, [newcomer.id, newcomer]]) };

  const plant = openPlant(route);
  const all = cablesFromHub(plant);
  const present = presentLayout(plant, all, all);
  const { sites } = sitesAlong(plant, all, present.stays, () => 8);
  const units = present.units.map((unit) => ({ unit, cableId: "", stationM: 0 }));
  const kept = keptPlaces(plant, present, sites, units);

  const dropOf = new Map([...route.drop.values()].map((one) => [one.livingUnitId, one]));
  expect(dropOf.size).toBeGreaterThan(20);
  for (const [index, { unit }] of units.entries()) {
    const site = sites[kept[index] ?? -1];
    const drop = dropOf.get(unit.id);
    if (drop) {
      const { spanId, pinned } = plant.rowOf("terminal", drop.terminalId);
      const { poleId } = terminalHang(plant, drop.terminalId);
      expect(site).toMatchObject({ spanId, poleId, terminalId: pinned ? drop.terminalId : null });
    } else expect(site).toBeUndefined();
  }
});
