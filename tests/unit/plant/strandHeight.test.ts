import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { strandAtPole } from "../../../core/plant/strandHeight.ts";
import { smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";

describe("the height of our strand at a pole", () => {
  it("is that of our attachment there", () => {
    expect(strandAtPole(openPlant(smallRoute()), "pole-2")).toEqual({ heightM: 6.3, attachmentId: "strand-2" });
  });

  it("is the company's usual one, marked as assumed, where the pole has none", () => {
    const plant = openPlant(without(smallRoute(), "attachment", "strand-2"));
    expect(strandAtPole(plant, "pole-2")).toEqual({ heightM: 5.6388, attachmentId: null });
  });

  it("is the lower one of two", () => {
    const second = {
      id: "strand-low",
      poleId: "pole-2",
      owner: "Us",
      kind: "ourStrand",
      heightM: 6,
      voltageV: 0,
      note: "",
      bonded: false,
    };
    const plant = openPlant(withRows(smallRoute(), "attachment", [{ ...second, kind: "ourStrand" as const }]));
    expect(strandAtPole(plant, "pole-2")).toEqual({ heightM: 6, attachmentId: "strand-low" });
  });
});
