import { describe, expect, it } from "vitest";
import { type ChangeOfState, changeOfState } from "../../core/strand/changeOfState.ts";
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
  tolerance: "the errors the kernels state",
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
