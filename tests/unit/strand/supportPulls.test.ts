import { expect, it } from "vitest";
import { supportPulls } from "../../../core/strand/supportPulls.ts";

const level = { spanM: 40, riseM: 0, weightNPerM: 3, horizontalN: 1500 };

it("the supports of a level span share its weight", () => {
  expect(supportPulls(level)).toEqual({
    nearDownN: 60,
    farDownN: 60,
    nearTensionN: Math.hypot(1500, 60),
    farTensionN: Math.hypot(1500, 60),
    nearSlopeRad: Math.atan(60 / 1500),
    farSlopeRad: Math.atan(60 / 1500),
  });
});

it("a load near one pole hangs mostly on it", () => {
  const pulls = supportPulls({ ...level, pointLoads: [{ atM: 4, weightN: 100 }] });
  expect([pulls.nearDownN, pulls.farDownN]).toEqual([150, 70]);
});

it("a taut span lifts the lower of two very unequal supports", () => {
  const pulls = supportPulls({ ...level, riseM: 4 });
  expect(pulls.nearDownN).toBeCloseTo(60 * Math.hypot(1, 0.1) - 150, 9);
  expect(pulls.farDownN).toBeCloseTo(60 * Math.hypot(1, 0.1) + 150, 9);
  expect(pulls.farTensionN).toBeGreaterThan(pulls.nearTensionN);
});
