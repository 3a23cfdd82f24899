import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { strandHeightFix } from "../../../core/rules/attachmentFix.ts";
import { feedWithRoom, freeFiber, otherFiberFix } from "../../../core/rules/giveFiberFix.ts";
import { nearestSparePort, otherPortFix } from "../../../core/rules/portFix.ts";
import { moveTerminalFix, standardDistanceFix } from "../../../core/rules/terminalFix.ts";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { fiberUseOf, rowOf, withLateral } from "../../fixtures/route/faultyRoutes.ts";

describe("fixes with fibers", () => {
  it("stay in the tube while it has a free fiber", () => {
    const plant = openPlant(smallRoute());
    expect([freeFiber(plant, "cable-1", 1), freeFiber(plant, "cable-1", 2), freeFiber(plant, "cable-1", 9)]).toEqual([
      3, 13, 3,
    ]);
  });

  it("are none for a fiber that feeds no splitter", () => {
    expect(otherFiberFix(openPlant(smallRoute()), fiberUseOf({ id: "x", fiber: 1, purpose: "dead" }))).toEqual([]);
  });

  it("take a hub output only while its hub splitter has a leg left", () => {
    expect(feedWithRoom(openPlant(smallRoute()), "cable-1")).toBe("feed-1");
    const full = ["feed-1", "feed-2"].reduce(
      (route, id) => changed(route, "feed", id, { hubSplitCount: 1 }),
      smallRoute(),
    );
    expect(feedWithRoom(openPlant(full), "cable-1")).toBeNull();
    expect(feedWithRoom(openPlant(withLateral()), "cable-2")).toBeNull();
  });
});

describe("fixes with ports", () => {
  it("take the lowest spare port with light", () => {
    expect(otherPortFix(openPlant(smallRoute()), rowOf(smallRoute(), "drop", "drop-1"))).toMatchObject([
      { input: { dropId: "drop-1", terminalId: "terminal-1", port: 3 } },
    ]);
  });

  it("go on to the next terminal where the nearest has no light", () => {
    const plant = openPlant(without(smallRoute(), "fiberUse", "use-1"));
    expect(nearestSparePort(plant, rowOf(smallRoute(), "livingUnit", "unit-1"))).toEqual({
      terminalId: "terminal-2",
      name: "T2",
      port: 2,
    });
  });

  it("are none where no terminal is within reach", () => {
    const far = { ...rowOf(smallRoute(), "livingUnit", "unit-1"), northM: 500 };
    expect(nearestSparePort(openPlant(smallRoute()), far)).toBeNull();
  });
});

describe("fixes with terminals", () => {
  it("stay between the poles and on the cable", () => {
    const plant = openPlant(withLateral());
    const to = (spanId: string, offsetM: number) =>
      moveTerminalFix(plant, "terminal-1", "Move", spanId, offsetM).length;
    expect([to("span-1", 20), to("span-1", 44.9), to("span-1", 0.1), to("span-4", 20)]).toEqual([1, 0, 0, 0]);
  });

  it("are none in a span too short for the standard distance", () => {
    const plant = openPlant(changed(smallRoute(), "span", "span-2", { lengthM: 1.5 }));
    expect(standardDistanceFix(plant, "terminal-1")).toEqual([]);
  });
});

describe("fixes with heights", () => {
  it("need an attachment of ours, and stay above ground", () => {
    expect(strandHeightFix("strand-2", 6)).toHaveLength(1);
    expect([strandHeightFix(null, 6), strandHeightFix("strand-2", -0.1)]).toEqual([[], []]);
  });
});
