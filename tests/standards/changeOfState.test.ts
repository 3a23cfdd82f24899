import { describe, expect, it } from "vitest";
import { breakingFrac } from "../../core/strand/breakingFrac.ts";
import { changeOfState } from "../../core/strand/changeOfState.ts";
import { lashOn } from "../../core/strand/lashing.ts";
import { parabolicSagM } from "../../core/strand/parabola.ts";
import { metresPerFoot, newtonsPerPoundForce, nPerMPerPoundPerFoot } from "../../core/units/constants.ts";
import { degCFromDegF } from "../../core/units/temperature.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const referenceSpan: Source = {
  document:
    "reference span: 150 ft of 1/4 in strand (0.0352 in2, 24e6 psi, 6.4e-6 per degF) with its cable, 0.202 lb/ft, strung to 1 % sag at 60 degF",
  edition: "parabolic change of state",
  mark: "computed",
  tolerance: "half the last digit",
};

const spanM = 150 * metresPerFoot;

function strand(modulusPsi: number) {
  return { spanM, axialStiffnessN: 0.0352 * modulusPsi * newtonsPerPoundForce, expansionPerDegC: 6.4e-6 * 1.8 };
}

/** Tension in lbf and sag in feet after the span has gone from its strung state to a load in lb/ft and a temperature in degF. */
function restate(
  toWeight: number,
  toDegF: number,
  strung = { weight: 0.202, horizontalLbf: 378.75 },
  modulusPsi = 24e6,
) {
  const weightNPerM = toWeight * nPerMPerPoundPerFoot;
  const state = changeOfState({
    ...strand(modulusPsi),
    from: {
      weightNPerM: strung.weight * nPerMPerPoundPerFoot,
      temperatureDegC: degCFromDegF(60),
      horizontalN: strung.horizontalLbf * newtonsPerPoundForce,
    },
    to: { weightNPerM, temperatureDegC: degCFromDegF(toDegF) },
  });
  if (!state.ok) throw new Error(state.fault.what);
  return {
    horizontalLbf: state.value.horizontalN / newtonsPerPoundForce,
    sagFt: parabolicSagM(spanM, weightNPerM, state.value.horizontalN) / metresPerFoot,
  };
}

describe(sourceTitle(referenceSpan), () => {
  const temperatures = [
    [0, "575.46", "0.9873"],
    [30, "465.08", "1.2216"],
    [32, "458.55", "1.2390"],
    [60, "378.75", "1.5000"],
    [90, "315.64", "1.7999"],
    [100, "298.91", "1.9007"],
    [120, "270.55", "2.0999"],
  ] as const;

  it.each(temperatures)("unloaded at %s degF it pulls %s lbf and sags %s ft", (toDegF, horizontalLbf, sagFt) => {
    const state = restate(0.202, toDegF);
    expectPrinted(state.horizontalLbf, horizontalLbf);
    expectPrinted(state.sagFt, sagFt);
  });

  const icedLbPerFt = (iceIn: number) => 0.202 + ((57 * Math.PI) / 144) * iceIn * (0.68 + iceIn);
  const loads = [
    ["the heavy district with its constant", 1.3905, 0, "1335.9", "2.927", "20.09"],
    ["the medium district with its constant", 0.8292, 15, "972.5", "2.398", "14.62"],
    ["the light district with its constant", 0.5985, 30, "780.9", "2.156", "11.74"],
    ["half an inch of ice", icedLbPerFt(0.5), 32, "999.3", "2.6335", "15.03"],
    ["a quarter inch of ice", icedLbPerFt(0.25), 32, "697.5", "1.9803", "10.49"],
  ] as const;

  it.each(loads)(
    "under %s (%d lb/ft, %s degF) it pulls %s lbf and sags %s ft, %s %% of its breaking strength",
    (_case, weight, toDegF, horizontalLbf, sagFt, percent) => {
      const state = restate(weight, toDegF);
      expectPrinted(state.horizontalLbf, horizontalLbf);
      expectPrinted(state.sagFt, sagFt);
      expectPrinted(100 * breakingFrac(state.horizontalLbf, 6650), percent);
    },
  );

  it("as strung it is pulled to 5.70 % of its breaking strength", () => {
    expectPrinted(100 * breakingFrac(378.75, 6650), "5.70");
  });

  it("ice governs the sag in the heavy district, warmth in the medium one", () => {
    const hotFt = restate(0.202, 120).sagFt;
    expect(restate(icedLbPerFt(0.5), 32).sagFt).toBeGreaterThan(hotFt);
    expect(restate(icedLbPerFt(0.25), 32).sagFt).toBeLessThan(hotFt);
  });

  it("bare strand pulled to 1.50 ft sags 1.7806 ft once the cable is lashed to it", () => {
    const state = restate(0.202, 60, { weight: 0.121, horizontalLbf: 226.875 });
    expectPrinted(state.horizontalLbf, "319.057");
    expectPrinted(state.sagFt, "1.7806");
    const pulled = {
      weightNPerM: 0.121 * nPerMPerPoundPerFoot,
      temperatureDegC: degCFromDegF(60),
      horizontalN: 226.875 * newtonsPerPoundForce,
    };
    const lashed = lashOn({ ...strand(24e6), from: pulled }, [
      { addedNPerM: 0.081 * nPerMPerPoundPerFoot, temperatureDegC: degCFromDegF(60) },
    ]);
    if (!lashed.ok) throw new Error(lashed.fault.what);
    expectPrinted((lashed.value[0]?.horizontalN ?? 0) / newtonsPerPoundForce, "319.057");
  });

  it("a modulus of 21e6 psi instead of 24e6 brings 25.20 in at 120 degF to 24.87, and 31.60 in under ice to 32.72", () => {
    const sagIn = (weight: number, toDegF: number, modulusPsi: number) =>
      12 * restate(weight, toDegF, undefined, modulusPsi).sagFt;
    expectPrinted(sagIn(0.202, 120, 24e6), "25.20");
    expectPrinted(sagIn(0.202, 120, 21e6), "24.87");
    expectPrinted(sagIn(icedLbPerFt(0.5), 32, 24e6), "31.60");
    expectPrinted(sagIn(icedLbPerFt(0.5), 32, 21e6), "32.72");
  });
});
