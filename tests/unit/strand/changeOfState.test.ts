import { describe, expect, it } from "vitest";
import { type ChangeOfState, changeOfState } from "../../../core/strand/changeOfState.ts";

const strung: ChangeOfState = {
  spanM: 45.72,
  axialStiffnessN: 3.76e6,
  expansionPerDegC: 1.15e-5,
  from: { weightNPerM: 2.95, temperatureDegC: 15.6, horizontalN: 1685 },
  to: { weightNPerM: 2.95, temperatureDegC: 48.9 },
};

describe("change of state", () => {
  it("nothing changed leaves the tension as it was strung", () => {
    const state = changeOfState({ ...strung, to: strung.from });
    expect(state.ok && state.horizontalN).toBeCloseTo(1685, 6);
  });

  it("a strand that neither stretches nor grows keeps its length, so its tension goes with its weight", () => {
    const state = changeOfState({
      ...strung,
      axialStiffnessN: 1e15,
      expansionPerDegC: 0,
      to: { weightNPerM: 5.9, temperatureDegC: -20 },
    });
    expect(state.ok && state.horizontalN / 3370).toBeCloseTo(1, 6);
  });

  it("a hard frost on a short taut span settles too", () => {
    const state = changeOfState({ ...strung, spanM: 3, to: { weightNPerM: 2.95, temperatureDegC: -40 } });
    expect(state.ok && state.horizontalN).toBeCloseTo(1685 + 1.15e-5 * 55.6 * 3.76e6, -1);
  });

  it("figures past all number are said not to settle", () => {
    expect(changeOfState({ ...strung, spanM: 1e200 })).toEqual({
      ok: false,
      what: "The tension did not settle in 100 steps.",
    });
  });

  it.each([
    { ...strung, spanM: 0 },
    { ...strung, axialStiffnessN: Number.NaN },
    { ...strung, expansionPerDegC: -1 },
    { ...strung, from: { ...strung.from, horizontalN: 0 } },
    { ...strung, to: { ...strung.to, weightNPerM: 0 } },
    { ...strung, to: { ...strung.to, temperatureDegC: Number.NaN } },
  ])("a strand that cannot be is refused", (change) => {
    expect(() => changeOfState(change)).toThrow(RangeError);
  });
});
