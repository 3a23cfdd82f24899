import { describe, expect, it } from "vitest";
import { blowOutM } from "../../../core/plant/blowOut.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { withStructure } from "../../fixtures/route/oneMore.ts";

const rule = "structure-swept";

describe(rule, () => {
  it("a wall within the swing of the strand is found, with the case that swings it there", () => {
    expect(findingsOf(faultyRoute(rule), rule)).toMatchObject([
      {
        message: "In span P1 to P2 the strand swings against the barn under the load of Heavy.",
        measured: expect.closeTo(blowOutM(openPlant(smallRoute()), "span-1", 22.5, "loaded") ?? Number.NaN, 9),
        limit: 0.1,
      },
    ]);
  });

  it("a wall that only extreme weather swings the strand against is found where the settings ask for that", () => {
    const plant = openPlant(extremeRoute());
    const besideM = (blowOutM(plant, "span-1", 22.5, "loaded") ?? Number.NaN) + 0.01;
    const walls = [...withStructure({ besideM, heightM: 9 }).structure.values()];
    expect(findingsOf(withRows(extremeRoute(), "structure", walls), rule)[0]?.message).toContain("under the load of");
    expect(findingsOf(withRows(smallRoute(), "structure", walls), rule)).toEqual([]);
  });

  it("a low roof that the swung strand hangs over is quiet", () => {
    expect(findingsOf(withStructure({ besideM: 0.1, heightM: 3 }), rule)).toEqual([]);
  });

  it("what the line passes over is quiet", () => {
    expect(findingsOf(withStructure({ besideM: 0 }), rule)).toEqual([]);
  });

  it("a wall where nobody measured the ground is found, and it is said that the strand may hang over it", () => {
    const unmeasured = changed(faultyRoute(rule), "pole", "pole-1", { groundM: null });
    expect(findingsOf(unmeasured, rule)[0]?.message).toContain(
      "unless it hangs over the top of it, which nobody measured",
    );
  });
});
