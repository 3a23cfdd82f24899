import { expect, test } from "vitest";
import { spanFrame } from "../../../renderer/canvas/spanFrame.ts";

const round = (value: number): number => Math.round(value * 1000) / 1000 + 0;

test("things hang below a span whichever pole it begins at", () => {
  const east = spanFrame(45, 0);
  expect([east.belowX, east.belowY].map(round)).toEqual([0, 1]);
  const west = spanFrame(-45, 0);
  expect([west.belowX, west.belowY, west.alongX, west.alongY].map(round)).toEqual([0, 1, 1, 0]);
});

test("along and below stand square on each other in every direction, and lettering is never upside down", () => {
  for (let deg = 0; deg < 360; deg += 7) {
    const frame = spanFrame(Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180));
    expect(round(frame.alongX * frame.belowX + frame.alongY * frame.belowY)).toBe(0);
    expect(round(frame.alongX * frame.belowY - frame.alongY * frame.belowX)).toBe(1);
    expect(Math.abs(Math.atan2(frame.alongY, frame.alongX))).toBeLessThanOrEqual((Math.PI / 180) * 110);
  }
});

test("a line that winds about straight north keeps its things on one side", () => {
  const sides = [80, 85, 90, 95, 100].map(
    (deg) => spanFrame(Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)).belowX > 0,
  );
  expect(sides).toEqual([true, true, true, true, true]);
});

test("two poles at one place still hang their things straight down", () => {
  expect(spanFrame(0, 0)).toEqual({ alongX: 1, alongY: 0, belowX: 0, belowY: 1 });
});
