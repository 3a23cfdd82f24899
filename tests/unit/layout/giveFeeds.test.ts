import { describe, expect, test } from "vitest";
import { giveFeeds, hubLegCount, hubLossDb, type UnlitFiber } from "../../../core/layout/giveFeeds.ts";
import type { Feed, FiberUse } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const plant = openPlant(smallRoute());

function output(number: number, hubSplitCount: number): Feed {
  const light = { opticalClassId: "class-b-plus", upstreamLossDb: 8, upstreamM: 1200 };
  return { id: `feed-${number}`, name: `Hub output ${number}`, hubSplitCount, ...light };
}

function fibers(count: number, legCount: number): UnlitFiber[] {
  return Array.from({ length: count }, (_, index) => ({ key: `${index + 1}`, legCount }));
}

function heldOn(feedId: string, fiber: number): FiberUse {
  const none = { closureId: null, lateralCableId: null, lateralFiber: null };
  const there = { terminalId: "terminal-1", splitterId: "splitter-1" };
  return { id: `held-${fiber}`, cableId: "cable-1", fiber, purpose: "terminal", ...there, ...none, feedId };
}

describe("with a class that allows 64", () => {
  test("an output serves as many fibers as it has legs, then the next one", () => {
    const { feedIdOf, added } = giveFeeds(plant, fibers(3, 8), [output(10, 2), output(2, 2)], []);
    expect([...feedIdOf.values()]).toEqual(["feed-2", "feed-2", "feed-10"]);
    expect(added).toEqual([]);
  });

  test("the outputs that are needed share the fibers evenly, in their order, and no other is opened", () => {
    const { feedIdOf, added } = giveFeeds(plant, fibers(10, 8), [output(1, 8), output(2, 8), output(3, 8)], []);
    expect([...feedIdOf.values()]).toEqual([...Array(5).fill("feed-1"), ...Array(5).fill("feed-2")]);
    expect(added).toEqual([]);
  });

  test("an output that lights decided fibers gets fewer new ones", () => {
    const held = [1, 2, 3, 4].map((fiber) => heldOn("feed-1", fiber));
    const { feedIdOf } = giveFeeds(plant, fibers(6, 8), [output(1, 8), output(2, 8)], held);
    expect([...feedIdOf.values()].filter((one) => one === "feed-1")).toHaveLength(1);
  });

  test("terminals of more legs keep the outputs that alone may light them", () => {
    const mixed = [...fibers(4, 4), { key: "large", legCount: 16 }];
    const { feedIdOf } = giveFeeds(plant, mixed, [output(1, 16), output(2, 4)], []);
    expect(feedIdOf.get("large")).toBe("feed-2");
    expect(feedIdOf.size).toBe(5);
  });

  test("an output of 16 does not light a splitter of 8, for that would be 128", () => {
    const { feedIdOf } = giveFeeds(plant, fibers(1, 8), [output(1, 16), output(2, 8)], []);
    expect(feedIdOf.get("1")).toBe("feed-2");
  });

  test("when all are full an output like the last one is added", () => {
    const { feedIdOf, added } = giveFeeds(plant, fibers(2, 8), [output(1, 1)], []);
    expect(feedIdOf.get("2")).toBe("feed-2");
    expect(added).toEqual([{ ...output(2, 8), upstreamLossDb: 11.5 }]);
  });

  test("legs that decided fibers hold are not given again", () => {
    expect(giveFeeds(plant, fibers(1, 8), [output(1, 1), output(2, 1)], [heldOn("feed-1", 1)]).feedIdOf.get("1")).toBe(
      "feed-2",
    );
  });

  test("taps one behind the other on one fiber hold one leg", () => {
    const held = [heldOn("feed-1", 1), { ...heldOn("feed-1", 1), id: "far" }];
    expect(giveFeeds(plant, fibers(1, 8), [output(1, 2), output(2, 1)], held).feedIdOf.get("1")).toBe("feed-1");
  });

  test("more legs than the class allows stay dark", () => {
    expect(giveFeeds(plant, fibers(1, 128), [output(1, 1)], [])).toEqual({ feedIdOf: new Map(), added: [] });
  });
});

test("without any output there is none to be like, and fibers stay dark", () => {
  expect(giveFeeds(plant, fibers(1, 8), [], []).feedIdOf.size).toBe(0);
});

test("64 living units an output and terminals of 8 make a hub splitter of 8; of 12, one of 4", () => {
  expect([hubLegCount(64, 8), hubLegCount(64, 12), hubLegCount(8, 16)]).toEqual([8, 4, 1]);
});

test("the hub's loss is the catalogue's splitter and its two connections", () => {
  expect(hubLossDb(plant, 8)).toBeCloseTo(10.5 + 2 * 0.5, 9);
  expect(hubLossDb(plant, 1)).toBe(0.5);
  expect(hubLossDb(plant, 16)).toBeCloseTo(0.8 + 3.4 * 4 + 1, 9);
});
