import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { feedingUseId, lightVerdict, portLight, spareLitPorts, splitterOfPort } from "../../../core/plant/portLight.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { fiberUseOf } from "../../fixtures/route/faultyRoutes.ts";

/** A living unit straight across the street: 30 m of run, 36.096 m of drop. */
const route = changed(smallRoute(), "livingUnit", "unit-1", { eastM: 45.9144, northM: 30 });

describe("the light of a port", () => {
  it("loses upstream, along fiber and drop, at splice, splitter and connections, up and down", () => {
    const light = portLight(openPlant(route), "drop-1");
    if (light.kind === "unknown") throw new Error(light.why);
    const hung = 1 + (8 / 3) * 0.01 ** 2;
    const fiberKm = ((45.9144 * hung + 6.096) * 1.01) / 1000;
    const dropDb = 0.036096 * 0.4;
    const pointsDb = 8 + 0.15 + 10.5 + 2 * 0.5;
    expect(light.upDb).toBeCloseTo(pointsDb + fiberKm * 0.35 + dropDb, 9);
    expect(light.downDb).toBeCloseTo(pointsDb + fiberKm * 0.28 + dropDb, 9);
    expect(light.leastDb).toBeCloseTo(light.downDb - 0.4, 9);
    expect(light).toMatchObject({ feedId: "feed-1", opticalClassId: "class-b-plus", splitCount: 32, spliceCount: 1 });
    expect(light.dropM).toBeCloseTo(36.096, 9);
  });

  it("is least no more than it is most, whatever a catalogue says of its splitter", () => {
    const plant = openPlant(changed(route, "splitterType", "splitter-8", { typicalLossDb: 20 }));
    const light = portLight(plant, "drop-1");
    if (light.kind === "unknown") throw new Error(light.why);
    expect(light.least).toEqual({ upDb: light.upDb, downDb: light.downDb });
  });

  it("is unknown where no leg reaches the port", () => {
    expect(portLight(openPlant(changed(route, "drop", "drop-1", { port: 9 })), "drop-1")).toEqual({
      kind: "unknown",
      why: "No splitter leg reaches port 9 of terminal T1.",
    });
  });

  it("is unknown where no fiber feeds the splitter", () => {
    expect(portLight(openPlant(without(route, "fiberUse", "use-1")), "drop-1")).toEqual({
      kind: "unknown",
      why: "No fiber feeds the splitter behind port 1 of terminal T1.",
    });
  });
});

describe("the verdict on the light", () => {
  const verdict = (upstreamLossDb: number, marginDb = 1) =>
    lightVerdict(
      openPlant(changed(changed(route, "feed", "feed-1", { upstreamLossDb }), "settings", "settings", { marginDb })),
      "drop-1",
    );

  it("is good between the class's two limits", () => {
    expect([verdict(2), verdict(8), verdict(15)]).toEqual(["good", "good", "good"]);
  });

  it("counts the company's margin as lost against the upper limit only", () => {
    expect([verdict(15.5), verdict(15.5, 0)]).toEqual(["tooWeak", "good"]);
    expect([verdict(1.5), verdict(1.5, 5)]).toEqual(["tooStrong", "tooStrong"]);
  });

  it("is none where the light is unknown", () => {
    expect(lightVerdict(openPlant(without(route, "fiberUse", "use-1")), "drop-1")).toBe("none");
  });
});

describe("what feeds a splitter", () => {
  it("is the lowest of its fibers, held ones left out", () => {
    const held = fiberUseOf({ id: "held", fiber: 3, purpose: "reserved", splitterId: "splitter-2" });
    const plant = openPlant(withRows(without(smallRoute(), "fiberUse", "use-2"), "fiberUse", [held]));
    expect([feedingUseId(plant, "splitter-1"), feedingUseId(plant, "splitter-2")]).toEqual(["use-1", null]);
  });
});

describe("spare ports with light", () => {
  it("are those without a drop behind a fed splitter", () => {
    expect(spareLitPorts(openPlant(smallRoute()), "terminal-1")).toEqual([3, 4, 5, 6, 7, 8]);
  });

  it("are none where no fiber comes", () => {
    expect(spareLitPorts(openPlant(without(smallRoute(), "fiberUse", "use-1")), "terminal-1")).toEqual([]);
  });

  it("are reached by a splitter", () => {
    const plant = openPlant(smallRoute());
    expect(splitterOfPort(plant, { terminalId: "terminal-1", port: 8 })).toBe("splitter-1");
    expect(splitterOfPort(plant, { terminalId: "terminal-1", port: 9 })).toBeNull();
  });
});
