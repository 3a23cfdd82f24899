import { describe, expect, it } from "vitest";
import { catenarySpan } from "../../../core/strand/catenary.ts";
import { catenarySagAtM } from "../../../core/strand/catenaryAt.ts";
import { type LoadedCatenary, loadedCatenary } from "../../../core/strand/loadedCatenary.ts";
import { type LoadedSpan, loadedSagM } from "../../../core/strand/loadedSpan.ts";

const sloping: LoadedSpan = { spanM: 40, riseM: 6, weightNPerM: 3, horizontalN: 800 };

function hang(span: LoadedSpan): LoadedCatenary {
  const hung = loadedCatenary(span);
  if (!hung.ok) throw new Error(hung.fault.what);
  return hung.value;
}

describe("a loaded catenary", () => {
  it("hangs as the plain catenary where nothing hangs in it", () => {
    const hung = hang(sloping);
    const plain = catenarySpan(sloping);
    expect(hung.lengthM).toBeCloseTo(plain.lengthM, 10);
    expect(hung.farTensionN).toBeCloseTo(plain.supportTensionN, 9);
    for (const atM of [0, 7, 20, 33, 40]) expect(hung.sagM(atM)).toBeCloseTo(catenarySagAtM(sloping, atM), 10);
  });

  it("a taut span with a terminal hangs as the parabola says, to a tenth of a millimetre", () => {
    const taut = { ...sloping, riseM: 0, horizontalN: 3000, pointLoads: [{ atM: 0.9144, weightN: 60 }] };
    for (const atM of [0.9144, 20, 39])
      expect(Math.abs(hang(taut).sagM(atM) - loadedSagM(taut, atM))).toBeLessThan(1e-4);
  });

  it("a load at either pole changes nothing", () => {
    const atPoles = [
      { atM: 0, weightN: 500 },
      { atM: 40, weightN: 500 },
    ];
    expect(hang({ ...sloping, pointLoads: atPoles }).lengthM).toBeCloseTo(hang(sloping).lengthM, 9);
  });

  it("a span far too slack to figure says so instead of guessing", () => {
    expect(loadedCatenary({ ...sloping, horizontalN: 0.01 })).toMatchObject({ ok: false });
  });

  it("a station outside the span and a load outside it are refused", () => {
    expect(() => hang(sloping).sagM(41)).toThrow(RangeError);
    expect(() => loadedCatenary({ ...sloping, pointLoads: [{ atM: 41, weightN: 1 }] })).toThrow(RangeError);
  });
});
