import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crossingClearance } from "../../core/plant/clearance.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { spanSag } from "../../core/plant/spanSag.ts";
import { sagAtM } from "../../core/strand/sagAt.ts";
import { changed, smallRoute } from "../fixtures/route/buildRoute.ts";

const crossing = fc.record({
  offsetM: fc.double({ min: 0, max: 45, noNaN: true }),
  widthM: fc.double({ min: 0.5, max: 60, noNaN: true }),
  groundM: fc.double({ min: 94, max: 106, noNaN: true }),
  along: fc.double({ min: 0, max: 1, noNaN: true }),
});

describe("clearance over a crossing", () => {
  it("is at no point of the crossing's width less than the figure told", () => {
    fc.assert(
      fc.property(crossing, ({ offsetM, widthM, groundM, along }) => {
        const sloped = changed(smallRoute(), "pole", "pole-3", { groundM });
        const plant = openPlant(changed(sloped, "crossing", "crossing-1", { offsetM, widthM }));
        const clearance = crossingClearance(plant, "crossing-1");
        const sag = spanSag(plant, "span-2");
        if (clearance.kind === "unknown" || sag.kind === "unknown") throw new Error("the span must be computable");
        const nearM = Math.max(0, offsetM - widthM / 2);
        const farM = Math.min(45, offsetM + widthM / 2);
        const pointM = Math.min(Math.max(nearM + along * (farM - nearM), 0), 45);
        const chordM = 6.3 + ((groundM - 100) * pointM) / 45;
        for (const state of [sag.stringing, sag.hot, sag.iced]) {
          const hereM = chordM - sagAtM(45, state.loadNPerM, state.horizontalN, pointM) - sag.bundle.underStrandM;
          expect(hereM).toBeGreaterThanOrEqual(clearance.leastM - 1e-9);
        }
      }),
      { numRuns: 300 },
    );
  });
});
