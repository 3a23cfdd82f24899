import fc from "fast-check";
import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { poleTopM, profileOf } from "../../../../core/plant/profile.ts";
import {
  elevationAt,
  elevationY,
  fitFrame,
  stationAt,
  stationX,
  zoomFrame,
} from "../../../../renderer/profile/frame.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";

const profile = profileOf(openPlant(smallRoute()), "cable-1");
const blank = { leftM: 0, baseM: 0, pxPerM: 1, upPxPerM: 10, widthPx: 900, heightPx: 360 };

test("the whole path fits between the edges, feet and tops too", () => {
  const frame = fitFrame(blank, profile);
  for (const pole of profile.poles) {
    expect(stationX(frame, pole.stationM)).toBeGreaterThan(0);
    expect(stationX(frame, pole.stationM)).toBeLessThan(900);
    expect(elevationY(frame, poleTopM(pole))).toBeGreaterThan(0);
    expect(elevationY(frame, pole.footM)).toBeLessThan(360);
  }
});

test("what is under the pointer stays there, however both scales change", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 900, noNaN: true }),
      fc.double({ min: 0, max: 360, noNaN: true }),
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      (x, y, along, up) => {
        const frame = fitFrame(blank, profile);
        const zoomed = zoomFrame(frame, [x, y], along, up);
        expect(stationAt(zoomed, x)).toBeCloseTo(stationAt(frame, x), 6);
        expect(elevationAt(zoomed, y)).toBeCloseTo(elevationAt(frame, y), 6);
      },
    ),
  );
});
