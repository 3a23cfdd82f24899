import { describe, expect, it } from "vitest";
import {
  farPoleId,
  lineAngleRad,
  planeDistanceM,
  pointOnSpan,
  segmentsCross,
  spanBearingRad,
  spansAtPole,
} from "../../../core/plant/geometry.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { withLateral } from "../../fixtures/route/faultyRoutes.ts";

const at = (eastM: number, northM: number) => ({ eastM, northM });

describe("the line in plan", () => {
  it("measures 3 by 4 as 5", () => {
    expect(planeDistanceM(at(1, 1), at(4, 5))).toBe(5);
  });

  it("scales a recorded length to the drawn chord", () => {
    const plant = openPlant(changed(smallRoute(), "span", "span-2", { lengthM: 50 }));
    expect(pointOnSpan(plant, "span-2", 25)).toEqual(at(67.5, 0));
  });

  it("lists the spans that meet at a pole", () => {
    expect(spansAtPole(openPlant(withLateral()), "pole-2")).toEqual(["span-1", "span-2", "span-4"]);
  });

  it("points along the span from its first pole", () => {
    const plant = openPlant(withLateral());
    expect(spanBearingRad(plant, "span-1")).toBe(0);
    expect(spanBearingRad(plant, "span-4")).toBeCloseTo(Math.PI / 2, 12);
  });

  it("names the pole at the other end", () => {
    const plant = openPlant(smallRoute());
    expect([farPoleId(plant, "span-1", "pole-1"), farPoleId(plant, "span-1", "pole-2")]).toEqual(["pole-2", "pole-1"]);
  });

  it("bends nowhere on a straight line and by a right angle into the lateral", () => {
    const plant = openPlant(withLateral());
    expect(lineAngleRad(plant, "pole-2", "span-1", "span-2")).toBeCloseTo(0, 12);
    expect(lineAngleRad(plant, "pole-2", "span-1", "span-4")).toBeCloseTo(Math.PI / 2, 12);
  });

  it("crosses only where both segments pass each other", () => {
    const across = { from: at(0, 0), to: at(10, 10) };
    expect(segmentsCross(across, { from: at(0, 10), to: at(10, 0) })).toBe(true);
    expect(segmentsCross(across, { from: at(10, 10), to: at(20, 0) })).toBe(false);
    expect(segmentsCross(across, { from: at(0, 1), to: at(9, 10) })).toBe(false);
  });
});
