import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import {
  facePlan,
  portCounts,
  portsOf,
  splittersOf,
  terminalHang,
  terminalPlace,
} from "../../../core/plant/terminalView.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { rowOf } from "../../fixtures/route/faultyRoutes.ts";

describe("where a terminal hangs", () => {
  it("is told from the first pole while that is nearer", () => {
    expect(terminalPlace(openPlant(smallRoute()), "terminal-1")).toEqual({
      eastM: 45.9144,
      northM: 0,
      poleId: "pole-2",
      fromPoleM: 0.9144,
      atFirstPole: true,
      stationM: 45.9144,
    });
  });

  it("is told from the far pole past the middle of the span", () => {
    const plant = openPlant(changed(smallRoute(), "terminal", "terminal-1", { offsetM: 44 }));
    expect(terminalHang(plant, "terminal-1")).toMatchObject({ poleId: "pole-3", fromPoleM: 1, atFirstPole: false });
  });
});

describe("the ports of a terminal", () => {
  it("are lit leg by leg from the splitter's first port", () => {
    const ports = portsOf(openPlant(smallRoute()), "terminal-1");
    expect(ports).toHaveLength(8);
    expect(ports[1]).toEqual({ port: 2, splitterId: "splitter-1", leg: 2, dropIds: ["drop-2"], isReserved: false });
    expect(ports[7]).toEqual({ port: 8, splitterId: "splitter-1", leg: 8, dropIds: [], isReserved: false });
  });

  it("have no leg beyond the splitters there are", () => {
    const plant = openPlant(changed(smallRoute(), "terminal", "terminal-1", { terminalModelId: "terminal-16" }));
    expect(portsOf(plant, "terminal-1")[8]).toEqual({
      port: 9,
      splitterId: null,
      leg: null,
      dropIds: [],
      isReserved: false,
    });
  });

  it("are counted as used once, however many drops they hold", () => {
    const plant = openPlant(changed(smallRoute(), "drop", "drop-2", { port: 1 }));
    expect(portCounts(plant, "terminal-1")).toEqual({ total: 8, used: 1, reserved: 0, spare: 7 });
  });
});

describe("reserved ports", () => {
  it("are the highest without a drop, and no spares", () => {
    const high = changed(smallRoute(), "drop", "drop-2", { port: 8 });
    const plant = openPlant(changed(high, "terminal", "terminal-1", { reservedPortCount: 2 }));
    expect(
      portsOf(plant, "terminal-1")
        .filter((one) => one.isReserved)
        .map((one) => one.port),
    ).toEqual([6, 7]);
    expect(portCounts(plant, "terminal-1")).toEqual({ total: 8, used: 2, reserved: 2, spare: 4 });
  });
});

describe("the splitters of a terminal", () => {
  it("come by their place inside it", () => {
    const route = withRows(smallRoute(), "splitter", [
      { ...rowOf(smallRoute(), "splitter", "splitter-1"), id: "a-second", position: 2, firstPort: 9 },
    ]);
    expect(splittersOf(openPlant(route), "terminal-1")).toEqual(["splitter-1", "a-second"]);
  });
});

describe("the face of a terminal", () => {
  it("numbers along the ranks where the model says rank", () => {
    expect(facePlan(openPlant(smallRoute()), "terminal-8").slice(3, 5)).toEqual([
      { port: 4, rank: 0, along: 3 },
      { port: 5, rank: 1, along: 0 },
    ]);
  });

  it("numbers down the columns where the model says column", () => {
    const plant = openPlant(changed(smallRoute(), "terminalModel", "terminal-8", { numbering: "column" }));
    expect(facePlan(plant, "terminal-8").slice(0, 3)).toEqual([
      { port: 1, rank: 0, along: 0 },
      { port: 2, rank: 1, along: 0 },
      { port: 3, rank: 0, along: 1 },
    ]);
  });
});
