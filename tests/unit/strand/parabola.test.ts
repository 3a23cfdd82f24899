import { describe, expect, it } from "vitest";
import { parabolicSagM, parabolicSpan } from "../../../core/strand/parabola.ts";

describe("the parabola", () => {
  it("a level span hangs lowest in its middle", () => {
    expect(parabolicSpan({ spanM: 40, riseM: 0, weightNPerM: 2, horizontalN: 800 })).toEqual({
      sagM: 0.5,
      lengthM: 40 + 2 / 120,
      lowPointM: 20,
      supportTensionN: 801,
    });
  });

  it("a rise moves the low point towards and past the lower support, whichever end that is", () => {
    const span = { spanM: 40, weightNPerM: 2, horizontalN: 800 };
    const up = parabolicSpan({ ...span, riseM: 3 });
    expect(up.lowPointM).toBe(-10);
    expect(up.sagM).toBe(0.5);
    expect(parabolicSpan({ ...span, riseM: -3 })).toEqual(up);
  });

  it("a slack strand cannot be strung by nothing", () => {
    expect(() => parabolicSagM(40, 2, 0)).toThrow("horizontalN");
    expect(() => parabolicSagM(Number.NaN, 2, 800)).toThrow("spanM");
    expect(() => parabolicSagM(1e200, 2, 800)).toThrow("sagM");
  });
});
