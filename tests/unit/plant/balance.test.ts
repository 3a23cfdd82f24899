import { describe, expect, test } from "vitest";
import { terminalBalance } from "../../../core/plant/balance.ts";
import { hubLegs } from "../../../core/plant/hubLegs.ts";
import { lightMargin } from "../../../core/plant/lightMargin.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { lossWithMarginDb, portLight } from "../../../core/plant/portLight.ts";
import { tubesOfCable } from "../../../core/plant/tubeUse.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { tapChain } from "../../fixtures/route/faultyRoutes.ts";

describe("the balance of a terminal", () => {
  test("every port is used, reserved, kept spare or free to grow; reserved ones are the highest, kept ones next", () => {
    const route = changed(smallRoute({ settings: { sparePortCount: 2 } }), "terminal", "terminal-1", {
      reservedPortCount: 1,
    });
    const balance = terminalBalance(openPlant(route), "terminal-1");
    expect(balance.ports.map((one) => one.state)).toEqual([
      "used",
      "used",
      "growth",
      "growth",
      "growth",
      "kept",
      "kept",
      "reserved",
    ]);
    expect(balance).toMatchObject({ used: 2, reserved: 1, kept: 2, growth: 3 });
  });

  test("a terminal with fewer ports left than the standard keeps has no growth and keeps what it has", () => {
    const balance = terminalBalance(openPlant(smallRoute({ settings: { sparePortCount: 7 } })), "terminal-1");
    expect(balance).toMatchObject({ used: 2, kept: 6, growth: 0 });
  });

  test("tells the tube it opens and the longest drop", () => {
    const plant = openPlant(changed(smallRoute(), "fiberUse", "use-1", { fiber: 15 }));
    const balance = terminalBalance(plant, "terminal-1");
    expect(balance.tubes).toEqual([{ tube: 2, places: [3] }]);
    expect(balance.longestRunM).toBeGreaterThan(0);
  });
});

describe("the tubes of a cable", () => {
  test("tell every fiber once, what it is for, and where the tube is opened from the feed end on", () => {
    const tubes = tubesOfCable(openPlant(smallRoute()), "cable-1");
    expect(tubes.flatMap((one) => one.fibers).map((one) => one.fiber)).toEqual(
      Array.from({ length: 48 }, (_, index) => index + 1),
    );
    expect(tubes[0]?.openings.map((one) => one.name)).toEqual(["T1", "T2"]);
    const states = tubes[0]?.fibers.map((one) => one.state) ?? [];
    expect(states.filter((one) => one === "terminal")).toHaveLength(2);
    expect(states.slice(-2)).toEqual(["kept", "kept"]);
    expect(tubes[1]?.openings).toEqual([]);
  });

  test("a reserved fiber is told as such and opens nothing", () => {
    const [use] = smallRoute().fiberUse.values();
    if (!use) throw new Error("the small route uses no fiber");
    const held = {
      ...use,
      id: "use-held",
      fiber: 14,
      purpose: "reserved" as const,
      terminalId: null,
      splitterId: null,
    };
    const tubes = tubesOfCable(openPlant(withRows(smallRoute(), "fiberUse", [{ ...held, feedId: null }])), "cable-1");
    expect(tubes[1]?.fibers[1]?.state).toBe("reserved");
    expect(tubes[1]?.openings).toEqual([]);
  });
});

describe("the legs of a hub output", () => {
  test("tell which terminals each lights and how their ports are used", () => {
    const route = changed(smallRoute(), "fiberUse", "use-2", { feedId: "feed-1" });
    const legs = hubLegs(openPlant(route), "feed-1");
    expect(legs.map((one) => [one.leg, ...one.terminalIds, one.usedCount, one.portCount])).toEqual([
      [1, "terminal-1", 2, 8],
      [2, "terminal-2", 1, 8],
    ]);
  });
});

test("a tap and the terminal beyond it stand on one leg, and one fiber of the tube is opened at both", () => {
  const plant = openPlant(tapChain({ deadLength: "reused" }));
  const [leg, ...others] = hubLegs(plant, "feed-1");
  expect(leg?.terminalIds).toEqual(["terminal-1", "terminal-2"]);
  expect(others).toEqual([]);
  const [tube] = tubesOfCable(plant, "cable-1");
  expect(tube?.openings.map((one) => one.places)).toEqual([[1], [1]]);
  expect(tube?.fibers[0]?.useIds).toEqual(["use-1", "use-2"]);
});

describe("the margin of light", () => {
  test("is what is left of the class after the loss and the company's margin, on the way where less is left", () => {
    const plant = openPlant(smallRoute());
    const [light, margin] = [portLight(plant, "drop-1"), lightMargin(plant, "drop-1")];
    if (light.kind === "unknown" || margin.kind === "unknown") throw new Error("no light");
    const { maxLossDb, minLossDb } = plant.rowOf("opticalClass", light.opticalClassId);
    expect(margin.worstDb).toBeCloseTo(maxLossDb - lossWithMarginDb(plant, light), 9);
    expect(margin.overloadDb).toBeCloseTo(light.leastDb - minLossDb, 9);
    expect(margin.way).toBe(light.upDb >= light.downDb ? "up" : "down");
  });
});
