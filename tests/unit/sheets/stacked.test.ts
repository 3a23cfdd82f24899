import fc from "fast-check";
import { expect, it } from "vitest";
import { stacked } from "../../../core/sheets/paper/stacked.ts";

const box = { left: 0, right: 100, bottom: 20, top: 120 };

it("puts every thing on a sheet once, in order, inside its box and clear of the one above", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0.1, max: 250, noNaN: true })), (heights) => {
      const sheets = stacked(heights, (one) => one, box, 5);
      expect(sheets.flat().map((one) => one.thing)).toEqual(heights);
      for (const rows of sheets) {
        rows.forEach((row, index) => {
          expect(row.box.bottom).toBeGreaterThanOrEqual(box.bottom - 1e-6);
          const above = rows[index - 1]?.box.bottom;
          expect(row.box.top).toBeCloseTo(above === undefined ? box.top : above - 5, 6);
        });
      }
    }),
  );
});

it("takes no new sheet for what still fits the last", () => {
  expect(stacked([40, 30, 20, 30], (one) => one, box, 5).map((rows) => rows.length)).toEqual([3, 1]);
});
