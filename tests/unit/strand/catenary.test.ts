import { describe, expect, it } from "vitest";
import { catenarySpan } from "../../../core/strand/catenary.ts";

const span = { spanM: 40, riseM: 0, weightNPerM: 2, horizontalN: 800 };

describe("the catenary", () => {
  it("a level span hangs lowest in its middle and pulls w (c + D) at the pole", () => {
    const curve = catenarySpan(span);
    expect(curve.lowPointM).toBe(20);
    expect(curve.supportTensionN).toBeCloseTo(2 * (400 + curve.sagM), 9);
  });

  it("with one support higher, points on the curve agree with the chord and the sag", () => {
    const riseM = 4;
    const { sagM, lowPointM, supportTensionN } = catenarySpan({ ...span, riseM });
    const heightM = (stationM: number) => 400 * Math.cosh((stationM - lowPointM) / 400);
    expect(heightM(40) - heightM(0)).toBeCloseTo(riseM, 9);
    expect((heightM(0) + heightM(40)) / 2 - heightM(20)).toBeCloseTo(sagM, 9);
    expect(supportTensionN).toBeCloseTo(2 * heightM(40), 9);
  });

  it("a very taut span keeps the digits of its small sag", () => {
    const { sagM } = catenarySpan({ ...span, horizontalN: 1e9 });
    expect(sagM / 4e-7).toBeCloseTo(1, 12);
  });

  it("a strand too slack to compute is refused rather than infinite", () => {
    expect(() => catenarySpan({ ...span, horizontalN: 0.01 })).toThrow(RangeError);
  });
});
