import { describe, expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { portLight } from "../../../core/plant/portLight.ts";
import { arrivingPower, portReading } from "../../../core/plant/portReading.ts";
import { terminalLight } from "../../../core/plant/terminalLight.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

const powers = {
  hubLaunchLeastDbm: 1.5,
  hubLaunchMostDbm: 5,
  unitReceiveLeastDbm: -27,
  unitReceiveMostDbm: -8,
  unitLaunchLeastDbm: 0.5,
  unitLaunchMostDbm: 5,
  hubReceiveLeastDbm: -28,
  hubReceiveMostDbm: -8,
};
const powered = () => changed(smallRoute(), "opticalClass", "class-b-plus", powers);

describe("the expected reading at a port", () => {
  test("is the unit's loss without the drop and without the connection at the unit", () => {
    const plant = openPlant(powered());
    const [light, reading] = [portLight(plant, "drop-1"), portReading(plant, "terminal-1", 1)];
    if (light.kind === "unknown" || reading.kind === "unknown") throw new Error("no light");
    const { attenuationDbPerKm } = plant.rowOf("dropType", "drop-flat");
    const beyondDb = (light.dropM / 1000) * attenuationDbPerKm + plant.settings().connectionLossDb;
    expect(reading.most.downDb).toBeCloseTo(light.downDb - beyondDb, 9);
    expect(reading.most.upDb).toBeCloseTo(light.upDb - beyondDb, 9);
    expect(reading.least.downDb).toBeCloseTo(light.least.downDb - beyondDb, 9);
  });

  test("is told for a spare port too, and alike for all ports of one splitter", () => {
    const plant = openPlant(powered());
    expect(portReading(plant, "terminal-1", 8)).toEqual(portReading(plant, "terminal-1", 1));
  });

  test("is what the hub launches less what is lost: the weakest light on the worst way, the strongest on the best", () => {
    const reading = portReading(openPlant(powered()), "terminal-1", 1);
    if (reading.kind === "unknown") throw new Error(reading.why);
    expect(reading.arrives?.leastDbm).toBeCloseTo(1.5 - reading.most.downDb, 9);
    expect(reading.arrives?.mostDbm).toBeCloseTo(5 - reading.least.downDb, 9);
  });

  test("has no power where the class does not tell what is launched, and nothing at all without a fiber", () => {
    expect(portReading(openPlant(smallRoute()), "terminal-1", 1)).toMatchObject({ kind: "known", arrives: null });
    const dark = openPlant(changed(smallRoute(), "fiberUse", "use-1", { splitterId: null }));
    expect(portReading(dark, "terminal-1", 1)).toMatchObject({ kind: "unknown" });
  });
});

test("in service the unit gets the hub's light and the hub the unit's, each less the loss of its way", () => {
  const plant = openPlant(powered());
  const [light, power] = [portLight(plant, "drop-1"), arrivingPower(plant, "drop-1")];
  if (light.kind === "unknown") throw new Error(light.why);
  expect(power?.atUnit?.leastDbm).toBeCloseTo(1.5 - light.downDb, 9);
  expect(power?.atHub?.mostDbm).toBeCloseTo(5 - light.least.upDb, 9);
  expect(arrivingPower(openPlant(smallRoute()), "drop-1")).toEqual({ atUnit: null, atHub: null });
});

describe("the light of a terminal", () => {
  test("is that of its worst unit, and counts the units without light", () => {
    const plant = openPlant(smallRoute());
    const light = terminalLight(plant, "terminal-1");
    expect(light.worst?.marginDb).toBeLessThan(30);
    expect(light.darkCount).toBe(0);
    const beyond = terminalLight(openPlant(changed(smallRoute(), "drop", "drop-2", { port: 20 })), "terminal-1");
    expect(beyond.darkCount).toBe(1);
  });

  test("tells how much too much light there is where the way loses too little", () => {
    const strict = changed(smallRoute(), "opticalClass", "class-b-plus", { minLossDb: 27 });
    expect(terminalLight(openPlant(strict), "terminal-1").overloadDb).toBeLessThan(0);
  });
});
