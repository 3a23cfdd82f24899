import { describe, expect, it } from "vitest";
import { dropsOfFeed, hubLeg, legsOfFiber, litFiberCount } from "../../../core/plant/feedView.ts";
import { fiberTrace } from "../../../core/plant/fiberTrace.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { portLight } from "../../../core/plant/portLight.ts";
import { isTapChain, takingStationM, takingsBefore, throughLossDb } from "../../../core/plant/taps.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { tapChain, withLateral } from "../../fixtures/route/faultyRoutes.ts";

const plant = openPlant(tapChain({ deadLength: "reused" }));
const [near, far] = ["use-1", "use-2"].map((id) => plant.rowOf("fiberUse", id));
if (!near || !far) throw new Error("the chain lacks a use");

describe("a tap and the terminal beyond it, on one fiber", () => {
  it("light goes on at the tap and ends at the terminal", () => {
    expect([throughLossDb(plant, near), throughLossDb(plant, far)]).toEqual([1.5, null]);
    expect(takingsBefore(plant, far, [near])).toEqual([near]);
    expect(takingsBefore(plant, near, [far])).toEqual([]);
    expect(takingStationM(plant, near)).toBeCloseTo(45.9144, 9);
  });

  it("are a chain; two ends are none, nor a chain whose terminal is nearer than the tap", () => {
    expect(isTapChain(plant, [far, near])).toBe(true);
    const ends = openPlant(changed(smallRoute(), "fiberUse", "use-2", { fiber: 1 }));
    expect(isTapChain(ends, [near, far])).toBe(false);
    const turned = openPlant(changed(tapChain({}), "splitter", "splitter-1", { splitterTypeId: "splitter-8" }));
    expect(isTapChain(turned, [near, far])).toBe(false);
  });

  it("the terminal beyond loses the tap and one splice more, and nothing is lost before it", () => {
    expect(fiberTrace(plant, "use-2")).toMatchObject({ tapCount: 1, tapDb: 1.5, spliceCount: 2 });
    expect(fiberTrace(plant, "use-1")).toMatchObject({ tapCount: 0, tapDb: 0, spliceCount: 1 });
    const plain = openPlant(changed(smallRoute(), "feed", "feed-2", { hubSplitCount: 1 }));
    const [tapped, bare] = [portLight(plant, "drop-3"), portLight(plain, "drop-3")];
    if (tapped.kind === "unknown" || bare.kind === "unknown") throw new Error("the port has no light");
    expect(tapped.upDb - bare.upDb).toBeCloseTo(1.5 + plant.settings().spliceLossDb, 9);
  });

  it("share one leg of the hub, and their legs add up", () => {
    expect(litFiberCount(plant, "feed-1")).toBe(1);
    expect(legsOfFiber(plant, "use-2")).toBe(16);
    expect([hubLeg(plant, "use-1"), hubLeg(plant, "use-2")]).toEqual([1, 1]);
    expect(dropsOfFeed(plant, "feed-1")).toEqual(["drop-1", "drop-2", "drop-3"]);
    expect(dropsOfFeed(plant, "feed-2")).toEqual([]);
  });
});

it("a lateral's drops belong to the hub output of the fiber it is spliced to", () => {
  const route = withLateral();
  const lateral = openPlant(route);
  expect(litFiberCount(lateral, "feed-1")).toBe(2);
  expect([hubLeg(lateral, "use-1"), hubLeg(lateral, "lateral-25")]).toEqual([1, 2]);
  expect(legsOfFiber(lateral, "lateral-25")).toBe(0);
});
