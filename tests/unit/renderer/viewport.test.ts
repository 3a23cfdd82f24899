import { expect, test } from "vitest";
import {
  fitTo,
  fullScalePxPerM,
  groundAt,
  isShown,
  panBy,
  screenX,
  screenY,
  type Viewport,
  zoomAbout,
  zoomOf,
} from "../../../renderer/canvas/viewport.ts";

const view: Viewport = { centreEastM: 500, centreNorthM: 200, pxPerM: 2, widthPx: 1000, heightPx: 600 };

test("100 % is a plan at 1 to 2400: 200 ft of ground take an inch of screen", () => {
  expect(fullScalePxPerM * 200 * 0.3048).toBeCloseTo(96, 9);
});

test("north is up and east is right", () => {
  expect([screenX(view, 510), screenY(view, 210)]).toEqual([520, 280]);
});

test("a pixel and its ground lead to each other", () => {
  const ground = groundAt(view, 123, 456);
  expect([screenX(view, ground.eastM), screenY(view, ground.northM)]).toEqual([123, 456]);
});

test("zooming keeps the ground under the pointer", () => {
  const closer = zoomAbout(view, 100, 50, 3);
  expect(closer.pxPerM).toBe(6);
  const [before, after] = [groundAt(view, 100, 50), groundAt(closer, 100, 50)];
  expect(after.eastM).toBeCloseTo(before.eastM, 9);
  expect(after.northM).toBeCloseTo(before.northM, 9);
});

test("zooming stops at both ends and stays put there", () => {
  const closest = zoomAbout(view, 0, 0, 1e9);
  const farthest = zoomAbout(view, 0, 0, 1e-9);
  expect(zoomAbout(closest, 700, 10, 2)).toEqual(closest);
  expect(farthest.pxPerM).toBeGreaterThan(0);
  expect(zoomOf(closest)).toBeGreaterThan(10);
});

test("the ground moves with the hand", () => {
  const ground = groundAt(view, 300, 300);
  const moved = panBy(view, 40, -25);
  expect([screenX(moved, ground.eastM), screenY(moved, ground.northM)]).toEqual([340, 275]);
});

test("fitting shows all four corners inside the margin", () => {
  const box = { westM: -800, eastM: 900, southM: 10, northM: 95 };
  const fitted = fitTo(view, box, 40);
  const corners = [
    [box.westM, box.southM],
    [box.eastM, box.northM],
  ] as const;
  expect(corners.every(([east, north]) => isShown(fitted, east, north, 39.99))).toBe(true);
  expect(screenX(fitted, box.westM)).toBeCloseTo(40, 6);
});

test("one pole alone is not shown from a hand's breadth", () => {
  const fitted = fitTo(view, { westM: 5, eastM: 5, southM: 5, northM: 5 }, 40);
  expect(zoomOf(fitted)).toBe(4);
});
