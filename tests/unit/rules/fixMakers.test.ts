import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { moveEndIntoRangeFixes, moveIntoRangeFix } from "../../../core/rules/attachmentFix.ts";
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
  const crowded = changed(smallRoute(), "attachment", "telephone-2", { heightM: 6.1 });

  it("move our attachment to the nearest whole inch that satisfies everything at once", () => {
    expect(moveIntoRangeFix(openPlant(crowded), "pole-2")).toEqual([
      {
        label: "Move our attachment at pole P2 to 21 ft 1 in",
        command: "attachment.set",
        input: { attachmentId: "strand-2", heightM: expect.closeTo(253 * 0.0254, 9) },
      },
    ]);
  });

  it("move it to a whole centimetre where the company reckons in metres", () => {
    const metric = changed(crowded, "settings", "settings", { unitSystem: "metric" });
    expect(moveIntoRangeFix(openPlant(metric), "pole-2")).toMatchObject([
      { label: "Move our attachment at pole P2 to 6.41 m", input: { heightM: expect.closeTo(6.41, 9) } },
    ]);
  });

  it("are none where nothing on the pole is ours to move, or no height would do", () => {
    expect(moveIntoRangeFix(openPlant(without(crowded, "attachment", "strand-2")), "pole-2")).toEqual([]);
    const full = changed(crowded, "attachment", "neutral-2", { heightM: 7 });
    expect(moveIntoRangeFix(openPlant(full), "pole-2")).toEqual([]);
  });

  it("are told for either end of a span that can mend it", () => {
    const low = changed(smallRoute(), "crossing", "crossing-1", { surfaceM: 100.8 });
    expect(moveEndIntoRangeFixes(openPlant(low), "span-2").map((one) => one.label)).toEqual([
      expect.stringMatching(/^Move our attachment at pole P2 to 2\d ft \d+ in$/),
      expect.stringMatching(/^Move our attachment at pole P3 to 2\d ft \d+ in$/),
    ]);
  });
});
