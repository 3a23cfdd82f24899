import { describe, expect, it } from "vitest";
import { type ChangeOfState, changeOfState } from "../../core/strand/changeOfState.ts";
import { exactChangeOfState } from "../../core/strand/exactChangeOfState.ts";
import { loadedCatenary } from "../../core/strand/loadedCatenary.ts";
import { loadedSagM } from "../../core/strand/loadedSpan.ts";
import { supportPulls } from "../../core/strand/supportPulls.ts";
import { degFromRad } from "../../core/units/angle.ts";
import { metresPerFoot, newtonsPerPoundForce, nPerMPerPoundPerFoot } from "../../core/units/constants.ts";
import { degCFromDegF } from "../../core/units/temperature.ts";
import { integrateChangeOfState, integrateSpan } from "./cableEquation.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const spanM = 150 * metresPerFoot;
const bare = { weightNPerM: 0.202 * nPerMPerPoundPerFoot, temperatureDegC: degCFromDegF(60) };

/** The reference span at 60 degF with a load of so many pounds so many feet from the near pole. */
function hangLoad(pounds: number, atFt: number): ChangeOfState {
  const pointLoads = [{ atM: atFt * metresPerFoot, weightN: pounds * newtonsPerPoundForce }];
  return {
    spanM,
    axialStiffnessN: 0.0352 * 24e6 * newtonsPerPoundForce,
    expansionPerDegC: 6.4e-6 * 1.8,
    from: { ...bare, horizontalN: 378.75 * newtonsPerPoundForce },
    to: { ...bare, pointLoads },
  };
}

function settledN(change: ChangeOfState): number {
  const state = changeOfState(change);
  if (!state.ok) throw new Error(state.fault.what);
  return state.value.horizontalN;
}

const referenceSpan: Source = {
  document:
    "reference span: 150 ft of 1/4 in strand (0.0352 in2, 24e6 psi, 6.4e-6 per degF) with its cable, 0.202 lb/ft, 378.75 lbf at 60 degF",
  edition: "equivalent beam over H",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(referenceSpan), () => {
  it.each([
    [15, "395.74", "0.2240", "1.4925", "4.31"],
    [200, "799.92", "0.7908", "1.0853", "14.79"],
  ])("%d lb hung 3 ft from the pole pulls %s lbf, dips %s ft there and leaves %s ft at midspan", (...row) => {
    const [pounds, horizontalLbf, dipFt, midspanFt, slopeDeg] = row;
    const change = hangLoad(pounds, 3);
    const horizontalN = settledN(change);
    const hung = { ...change.to, spanM, riseM: 0, horizontalN };
    expectPrinted(horizontalN / newtonsPerPoundForce, horizontalLbf);
    expectPrinted(loadedSagM(hung, 3 * metresPerFoot) / metresPerFoot, dipFt);
    expectPrinted(loadedSagM(hung, spanM / 2) / metresPerFoot, midspanFt);
    expectPrinted(degFromRad(supportPulls(hung).nearSlopeRad), slopeDeg);
  });

  it("15 lb hung 3 ft from the pole hang on it with 29.85 lbf, the strand's share in it", () => {
    const change = hangLoad(15, 3);
    const { nearDownN } = supportPulls({ ...change.to, spanM, riseM: 0, horizontalN: settledN(change) });
    expectPrinted(nearDownN / newtonsPerPoundForce, "29.85");
  });

  it("a load of 15 lb at 3 ft loads the span as 0.21888 lb/ft would, one of 200 lb as 0.72269 lb/ft", () => {
    for (const [pounds, even] of [
      [15, 0.21888],
      [200, 0.72269],
    ] as const) {
      const change = hangLoad(pounds, 3);
      const alike = settledN({ ...change, to: { ...bare, weightNPerM: even * nPerMPerPoundPerFoot } });
      // five digits of the even load are four of the tension
      expect(settledN(change) / alike).toBeCloseTo(1, 4);
    }
  });

  it("by direct integration of the arc 15 lb at 3 ft pull 395.72 lbf to two hundredths", () => {
    expectPrinted(integrateChangeOfState(hangLoad(15, 3)) / newtonsPerPoundForce, "395.72", 2);
  });
});

const integration: Source = {
  document: "cable equation integrated numerically with a kink at each load, elastic stretch along the arc (odex)",
  edition: "Hairer and Wanner, ODEX, relative tolerance 1e-13",
  mark: "computed",
  tolerance: "1e-8 for the elastic catenary; the errors the parabola states",
};

describe(sourceTitle(integration), () => {
  // pounds, feet from the pole, largest error of the tension: it is always on the high side
  const loads = [
    [15, 3, 0.0001],
    [15, 30, 0.0003],
    [15, 75, 0.0003],
    [50, 3, 0.0009],
    [50, 75, 0.0006],
    [200, 3, 0.0055],
    [200, 30, 0.002],
    [200, 75, 0.0016],
  ] as const;

  it.each(loads)(
    "%d lb at %d ft: tension within %d of the integrated one, and not below it",
    (pounds, atFt, errorFrac) => {
      const change = hangLoad(pounds, atFt);
      const error = settledN(change) / integrateChangeOfState(change) - 1;
      expect(error).toBeGreaterThan(0);
      expect(error).toBeLessThan(errorFrac);
    },
  );

  it.each(loads)("%d lb at %d ft: by the elastic catenary the tension is the integrated one", (pounds, atFt) => {
    const change = { ...hangLoad(pounds, atFt), riseM: 4 };
    const exact = exactChangeOfState(change);
    expect(exact.ok && Math.abs(exact.value.horizontalN / integrateChangeOfState(change) - 1)).toBeLessThan(1e-8);
  });

  it("terminal, coil and worker in one sloping span: the loaded catenary hangs and pulls as the integrated one", () => {
    const pointLoads = [
      { atM: 30, weightN: 890 },
      { atM: 0.9144, weightN: 66 },
      { atM: 12, weightN: 40 },
    ];
    const hung = { spanM, riseM: -8, weightNPerM: 3, horizontalN: 2500, pointLoads };
    const atM = [0.5, 0.9144, 5, 12, 22.86, 30, 44];
    const integrated = integrateSpan(hung, atM);
    const exact = loadedCatenary(hung);
    if (!exact.ok) throw new Error(exact.fault.what);
    expect(exact.value.lengthM).toBeCloseTo(integrated.lengthM, 9);
    expect(exact.value.tensionAlongNxM / integrated.tensionAlongNxM).toBeCloseTo(1, 10);
    expect(exact.value.nearTensionN).toBeCloseTo(2500 * Math.hypot(1, integrated.nearSlope), 6);
    atM.forEach((at, i) => {
      const sagM = (-8 * at) / spanM - (integrated.heightsM[i] ?? Number.NaN);
      expect(exact.value.sagM(at), `at ${at} m`).toBeCloseTo(sagM, 9);
    });
  });

  it("terminal, coil and worker in one sloping span: tension within 0.3 %, heights within 3 mm at one tension", () => {
    const pointLoads = [
      { atM: 0.9144, weightN: 66 },
      { atM: 12, weightN: 40 },
      { atM: 30, weightN: 890 },
    ];
    const change = { ...hangLoad(0, 0), riseM: 3, to: { ...bare, pointLoads } };
    const horizontalN = settledN(change);
    expect(Math.abs(horizontalN / integrateChangeOfState(change) - 1)).toBeLessThan(0.003);
    const hung = { ...change.to, spanM, riseM: 3, horizontalN };
    const atM = [0.5, 0.9144, 5, 12, 22.86, 30, 44];
    const integrated = integrateSpan(hung, atM);
    atM.forEach((at, i) => {
      const heightM = (3 * at) / spanM - loadedSagM(hung, at);
      expect(Math.abs(heightM - (integrated.heightsM[i] ?? Number.NaN)), `at ${at} m`).toBeLessThan(0.003);
    });
    expect(Math.tan(supportPulls(hung).nearSlopeRad)).toBeCloseTo(-integrated.nearSlope, 3);
  });
});
