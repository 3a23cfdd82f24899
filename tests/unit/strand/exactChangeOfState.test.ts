import { describe, expect, it } from "vitest";
import { type ChangeOfState, changeOfState } from "../../../core/strand/changeOfState.ts";
import { exactChangeOfState } from "../../../core/strand/exactChangeOfState.ts";

const strung: ChangeOfState = {
  spanM: 45.72,
  axialStiffnessN: 3.76e6,
  expansionPerDegC: 1.15e-5,
  from: { weightNPerM: 2.95, temperatureDegC: 15.6, horizontalN: 1685 },
  to: { weightNPerM: 2.95, temperatureDegC: 48.9 },
};

function tensionN(change: ChangeOfState, solve = exactChangeOfState): number {
  const state = solve(change);
  if (!state.ok) throw new Error(state.fault.what);
  return state.value.horizontalN;
}

describe("change of state by the catenary", () => {
  it("nothing changed leaves the tension as it was strung", () => {
    expect(tensionN({ ...strung, to: strung.from })).toBeCloseTo(1685, 6);
  });

  it("a taut span without point loads changes as by the parabola, to a hundredth of a percent", () => {
    expect(tensionN(strung) / tensionN(strung, changeOfState)).toBeCloseTo(1, 4);
  });

  it("a worker near the pole pulls half a percent less than by the parabola", () => {
    const worker = { ...strung, to: { ...strung.from, pointLoads: [{ atM: 0.9144, weightN: 890 }] } };
    expect(tensionN(worker) / tensionN(worker, changeOfState)).toBeCloseTo(0.995, 3);
  });

  it("a span far out of proportion says that it did not settle", () => {
    expect(exactChangeOfState({ ...strung, spanM: 1e200 })).toMatchObject({
      ok: false,
      fault: { code: "not-settled" },
    });
    expect(exactChangeOfState({ ...strung, from: { ...strung.from, horizontalN: 0.001 } }).ok).toBe(false);
  });

  it("a strand that cannot be is refused", () => {
    expect(() => exactChangeOfState({ ...strung, spanM: 0 })).toThrow(RangeError);
  });
});
