import * as fc from "fast-check";
import { expect, it } from "vitest";
import { valueAtPlace } from "../../../core/placement/selection.ts";

it("finds the value that sorting would put at a place, whether values are equal or not", () => {
  const figure = fc.oneof(fc.integer({ min: 0, max: 4 }), fc.double({ noNaN: true }));
  fc.assert(
    fc.property(fc.array(figure, { minLength: 1, maxLength: 200 }), fc.nat(), fc.nat(3), (figures, at, beyond) => {
      const place = at % figures.length;
      const values = Float64Array.from([...figures, ...Array.from({ length: beyond }, () => -7)]);
      const found = valueAtPlace(values, figures.length, place);
      expect(found === Float64Array.from(figures).sort()[place]).toBe(true);
    }),
  );
});
