import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { separationLimitFor } from "../../../core/plant/separation.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

/** A primary of 14.4 kV over supply limits that ask so many inches more for each kV. */
function raised(inchesPerKv: number) {
  return ["limit-supplyAtPole", "limit-supplyInSpan"].reduce(
    (route, id) => changed(route, "clearanceLimit", id, { moreMPerV: (inchesPerKv * 0.0254) / 1000 }),
    faultyRoute("supply-voltage-over-limit"),
  );
}

describe("supply-voltage-over-limit", () => {
  it("a primary of 14.4 kV to ground is found", () => {
    expect(findingsOf(faultyRoute("supply-voltage-over-limit"), "supply-voltage-over-limit")).toMatchObject([
      {
        message:
          "The primary at pole P2 has a higher voltage than the supply limits are for: it needs more than they say.",
        measured: 14400,
      },
    ]);
  });

  it("a primary of 7.2 kV to ground, and one over limits that say how much more they ask, are quiet", () => {
    expect(findingsOf(smallRoute(), "supply-voltage-over-limit")).toEqual([]);
    expect(findingsOf(raised(0.3), "supply-voltage-over-limit")).toEqual([]);
  });

  it("is held against 40 in and 0.4 in more for each kV over 8.7 kV, where the limit says so", () => {
    const neededM = (40 + 0.4 * (14.4 - 8.7)) * 0.0254;
    const plant = openPlant(raised(0.4));
    const primary = (voltageV: number) => ({ kind: "primary" as const, voltageV, bonded: false });
    expect(separationLimitFor(plant, primary(14_400), "AtPole")?.limitM).toBeCloseTo(neededM, 12);
    expect(separationLimitFor(plant, primary(7_200), "AtPole")?.limitM).toBeCloseTo(1.016, 12);
    const primaryM = (gapM: number) =>
      changed(raised(0.4), "attachment", "primary-2", { heightM: 6.3 + gapM, voltageV: 14_400 });
    expect(findingsOf(primaryM(neededM - 0.001), "supply-separation-at-pole")).toMatchObject([
      { limit: expect.closeTo(neededM, 9) },
    ]);
    expect(findingsOf(primaryM(neededM + 0.001), "supply-separation-at-pole")).toEqual([]);
  });
});
