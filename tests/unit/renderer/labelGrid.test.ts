import { expect, test } from "vitest";
import { openLabelGrid } from "../../../renderer/canvas/labelGrid.ts";

const plate = { x: 100, y: 100, widthPx: 40, heightPx: 10, turnRad: 0 };

test("the second label does not lie on the first", () => {
  const grid = openLabelGrid();
  expect(grid.take(plate, true)).toBe(true);
  expect(grid.take({ ...plate, x: 120 }, true)).toBe(false);
  expect(grid.take({ ...plate, x: 160 }, true)).toBe(true);
});

test("a turned label takes its turned place only", () => {
  const grid = openLabelGrid();
  expect(grid.take({ ...plate, turnRad: Math.PI / 2 }, true)).toBe(true);
  expect(grid.take({ ...plate, x: 130 }, true)).toBe(true);
  expect(grid.take({ ...plate, y: 115, widthPx: 10 }, true)).toBe(false);
});

test("a label keeps off the strand always, and off a drop while there is another place", () => {
  const grid = openLabelGrid();
  grid.blockLine(0, 50, 200, 50);
  grid.crossLine(0, 100, 200, 100);
  expect(grid.take({ ...plate, y: 50 }, false)).toBe(false);
  expect(grid.take(plate, true)).toBe(false);
  expect(grid.take(plate, false)).toBe(true);
});
