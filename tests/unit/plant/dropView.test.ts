import { describe, expect, it } from "vitest";
import { dropCutM, dropEnds, dropRunM, dropsOfUnit } from "../../../core/plant/dropView.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

describe("a drop", () => {
  it("runs straight in plan from the terminal to the living unit", () => {
    const plant = openPlant(changed(smallRoute(), "livingUnit", "unit-1", { eastM: 45.9144 + 30, northM: 40 }));
    expect(dropRunM(plant, "drop-1")).toBeCloseTo(50, 9);
    expect(dropEnds(plant, "drop-1").from).toMatchObject({ eastM: 45.9144, northM: 0 });
  });

  it("is cut longer by the company's allowance for the house side", () => {
    const plant = openPlant(smallRoute());
    expect(dropCutM(plant, "drop-1") - dropRunM(plant, "drop-1")).toBeCloseTo(6.096, 9);
  });

  it("is found from the living unit it serves", () => {
    expect(dropsOfUnit(openPlant(smallRoute()), "unit-2")).toEqual(["drop-2"]);
  });
});
