import { describe, expect, it } from "vitest";
import { tubeOf, usesOfCable, usesOfTerminal } from "../../../core/plant/fiberView.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { fiberUseOf } from "../../fixtures/route/faultyRoutes.ts";

describe("the fibers of a cable", () => {
  it("are listed by fiber number, not by id", () => {
    const route = changed(smallRoute(), "fiberUse", "use-1", { fiber: 9 });
    expect(usesOfCable(openPlant(route), "cable-1")).toEqual(["use-2", "use-1"]);
  });

  it("are listed for each terminal", () => {
    const more = fiberUseOf({ id: "a-more", fiber: 7, purpose: "terminal", terminalId: "terminal-1" });
    expect(usesOfTerminal(openPlant(withRows(smallRoute(), "fiberUse", [more])), "terminal-1")).toEqual([
      "use-1",
      "a-more",
    ]);
  });

  it("lie in tubes of twelve", () => {
    const plant = openPlant(smallRoute());
    expect([1, 12, 13, 48].map((fiber) => tubeOf(plant, "cable-1", fiber))).toEqual([
      { tube: 1, place: 1 },
      { tube: 1, place: 12 },
      { tube: 2, place: 1 },
      { tube: 4, place: 12 },
    ]);
  });
});
