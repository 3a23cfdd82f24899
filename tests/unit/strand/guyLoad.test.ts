import { expect, it } from "vitest";
import { guyLoad } from "../../../core/strand/guyLoad.ts";

it("two strands on one pole pull the guy by their leverage", () => {
  const pulls = [
    { pullN: 1000, heightM: 8 },
    { pullN: 500, heightM: 6 },
  ];
  expect(guyLoad({ pulls, guyHeightM: 8, leadM: 6 })).toEqual({
    horizontalN: 1375,
    guyN: 1375 * Math.hypot(1, 8 / 6),
    verticalN: 1375 * (8 / 6),
    slopeRad: Math.atan(8 / 6),
  });
});

it("a longer lead eases guy and pole", () => {
  const near = guyLoad({ pulls: [{ pullN: 1000, heightM: 8 }], guyHeightM: 8, leadM: 4 });
  const far = guyLoad({ pulls: [{ pullN: 1000, heightM: 8 }], guyHeightM: 8, leadM: 8 });
  expect(far.guyN).toBeLessThan(near.guyN);
  expect(far.verticalN).toBeLessThan(near.verticalN);
});

it("a pole that nothing pulls on loads no guy", () => {
  expect(guyLoad({ pulls: [], guyHeightM: 8, leadM: 4 })).toMatchObject({ guyN: 0, verticalN: 0 });
});

it.each([
  { pulls: [], guyHeightM: 0, leadM: 4 },
  { pulls: [], guyHeightM: 8, leadM: 0 },
  { pulls: [{ pullN: -1, heightM: 8 }], guyHeightM: 8, leadM: 4 },
  { pulls: [{ pullN: 1, heightM: Number.NaN }], guyHeightM: 8, leadM: 4 },
])("a guy that cannot stand is refused", (pole) => {
  expect(() => guyLoad(pole)).toThrow(RangeError);
});
