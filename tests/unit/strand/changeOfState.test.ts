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
    expect(state.ok && state.value.horizontalN).toBeCloseTo(1685, 6);
  });

  it("a strand that neither stretches nor grows keeps its length, so its tension goes with its weight", () => {
    const state = changeOfState({
      ...strung,
      axialStiffnessN: 1e15,
      expansionPerDegC: 0,
      to: { weightNPerM: 5.9, temperatureDegC: -20 },
    });
    expect(state.ok && state.value.horizontalN / 3370).toBeCloseTo(1, 6);
  });

  it("a hard frost on a short taut span settles too", () => {
    const state = changeOfState({ ...strung, spanM: 3, to: { weightNPerM: 2.95, temperatureDegC: -40 } });
    expect(state.ok && state.value.horizontalN).toBeCloseTo(1685 + 1.15e-5 * 55.6 * 3.76e6, -1);
  });

  it("a load at a pole changes nothing, wherever else it hangs it pulls harder", () => {
    const tensionN = (atM: number) => {
      const state = changeOfState({ ...strung, to: { ...strung.from, pointLoads: [{ atM, weightN: 100 }] } });
      return state.ok ? state.value.horizontalN : 0;
    };
    expect(tensionN(0)).toBeCloseTo(1685, 6);
    expect(tensionN(45.72)).toBeCloseTo(1685, 6);
    expect(tensionN(0.9144)).toBeGreaterThan(1690);
    expect(tensionN(22.86)).toBeGreaterThan(tensionN(0.9144));
  });

  it("warmth slackens a sloping span more, whichever of its supports is the higher", () => {
    const level = changeOfState(strung);
    const sloping = changeOfState({ ...strung, riseM: 20 });
    expect(level.ok && sloping.ok && sloping.value.horizontalN < level.value.horizontalN).toBe(true);
    expect(changeOfState({ ...strung, riseM: -20 })).toEqual(sloping);
  });

  it("figures past all number are said not to settle", () => {
    expect(changeOfState({ ...strung, spanM: 1e200 })).toMatchObject({
      ok: false,
      fault: { code: "not-settled", what: "The tension did not settle in 100 steps." },
    });
  });

  it.each([
    { ...strung, from: { ...strung.from, horizontalN: 8.98846567431158e307 } },
    { ...strung, from: { ...strung.from, temperatureDegC: Number.MAX_VALUE } },
  ])("a tension past all number is not handed out", (change) => {
    const state = changeOfState(change);
    expect(!state.ok || Number.isFinite(state.value.horizontalN)).toBe(true);
  });

  it.each([
    { ...strung, spanM: 0 },
    { ...strung, axialStiffnessN: Number.NaN },
    { ...strung, expansionPerDegC: -1 },
    { ...strung, from: { ...strung.from, horizontalN: 0 } },
    { ...strung, to: { ...strung.to, weightNPerM: 0 } },
    { ...strung, riseM: Number.NaN },
    { ...strung, to: { ...strung.to, pointLoads: [{ atM: 46, weightN: 60 }] } },
    { ...strung, to: { ...strung.to, pointLoads: [{ atM: 1, weightN: -60 }] } },
    { ...strung, to: { ...strung.to, temperatureDegC: Number.NaN } },
  ])("a strand that cannot be is refused", (change) => {
    expect(() => changeOfState(change)).toThrow(RangeError);
  });
});
