import { expect, it } from "vitest";
import {
  beamMomentNxM,
  type EquivalentBeam,
  nearReactionN,
  shearSquaredN2M,
  wholeLoadN,
} from "../../../core/strand/equivalentBeam.ts";

const beam: EquivalentBeam = {
  spanM: 10,
  runNPerM: 2,
  pointLoads: [
    { atM: 8, weightN: 5 },
    { atM: 2, weightN: 10 },
  ],
};

it("the near support carries half the even load and each point load by its nearness", () => {
  expect(nearReactionN(beam)).toBe(10 + 8 + 1);
  expect(wholeLoadN(beam)).toBe(35);
});

it("the moment at a station is that of the reaction less that of the loads before it", () => {
  expect(beamMomentNxM(beam, 5)).toBeCloseTo(19 * 5 - 2 * 5 * 2.5 - 10 * 3, 12);
  expect([beamMomentNxM(beam, 0), beamMomentNxM(beam, 10)]).toEqual([0, 0]);
});

it("the squared shear adds up piece by piece, whatever the order of the loads", () => {
  // shear falls from 19 to 15, from 5 to -7, and from -12 to -16
  const piece = (fromN: number, toN: number) => (fromN ** 3 - toN ** 3) / 6;
  expect(shearSquaredN2M(beam)).toBeCloseTo(piece(19, 15) + piece(5, -7) + piece(-12, -16), 9);
  expect(shearSquaredN2M({ ...beam, pointLoads: [...beam.pointLoads].reverse() })).toBeCloseTo(
    shearSquaredN2M(beam),
    9,
  );
});
