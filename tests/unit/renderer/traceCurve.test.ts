import fc from "fast-check";
import { expect, test } from "vitest";
import { curveColumns, levelAt } from "../../../renderer/trace/curveColumns.ts";
import {
  fiberAtX,
  fitTrace,
  levelAtY,
  panTrace,
  type TraceFrame,
  zoomTrace,
} from "../../../renderer/trace/traceFrame.ts";

const frame: TraceFrame = { leftM: 0, topDb: 0, pxPerM: 0.1, pxPerDb: 10, widthPx: 500, heightPx: 200 };

test("100,000 points on 500 pixels are a column a pixel, and no peak is lost", () => {
  const levelsDb = Float64Array.from({ length: 100_000 }, (_, index) => (index === 77_777 ? -1 : -20));
  const columns = curveColumns({ levelsDb, firstM: 0, stepM: 0.05 }, frame);
  expect(columns.length).toBeLessThanOrEqual(502);
  expect(Math.max(...columns.map((one) => one.highDb))).toBe(-1);
  expect(columns.filter((one) => one.highDb === -1).map((one) => one.x)).toEqual([Math.round(77_777 * 0.05 * 0.1)]);
});

test("a curve from the far end is drawn from left to right too, with the same levels at the same places", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: -40_000, max: 0 }), { minLength: 2, maxLength: 80 }),
      fc.integer({ min: 1, max: 300 }),
      (thousandths, stepM) => {
        const levelsDb = Float64Array.from(thousandths, (one) => one / 1000);
        const forth = { levelsDb, firstM: 0, stepM };
        const back = { levelsDb: levelsDb.toReversed(), firstM: (levelsDb.length - 1) * stepM, stepM: -stepM };
        expect(curveColumns(back, frame)).toEqual(curveColumns(forth, frame));
        expect(levelAt(back, stepM)).toBe(levelAt(forth, stepM));
      },
    ),
    { numRuns: 200, seed: 61 },
  );
});

test("beside a curve there is no level", () => {
  expect(levelAt({ levelsDb: Float64Array.of(-1, -2), firstM: 0, stepM: 10 }, 35)).toBeNull();
});

test("what is under a pixel stays under it while one zooms, and moves with the hand", () => {
  const near = zoomTrace(frame, [120, 60], 3, 2);
  expect(fiberAtX(near, 120)).toBeCloseTo(fiberAtX(frame, 120), 9);
  expect(levelAtY(near, 60)).toBeCloseTo(levelAtY(frame, 60), 9);
  expect(fiberAtX(panTrace(frame, 30, 10), 130)).toBeCloseTo(fiberAtX(frame, 100), 9);
});

test("all of a trace is in sight when it is fitted", () => {
  const fitted = fitTrace(frame, { fromM: -150, toM: 5000, topDb: -8, bottomDb: -45 });
  expect([fiberAtX(fitted, 0) < -150, fiberAtX(fitted, 500) > 5000]).toEqual([true, true]);
  expect([levelAtY(fitted, 0) > -8, levelAtY(fitted, 200) < -45]).toEqual([true, true]);
});
