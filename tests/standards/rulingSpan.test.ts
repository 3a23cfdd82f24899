import { describe, expect, it } from "vitest";
import { loadedCatenary } from "../../core/strand/loadedCatenary.ts";
import { rulingSpanM } from "../../core/strand/rulingSpan.ts";
import { rowStringingN, slippingSpans } from "../../core/strand/slippingSpans.ts";
import { stringingTable } from "../../core/strand/stringingTable.ts";
import {
  metresPerFoot,
  metresPerInch,
  newtonsPerPoundForce,
  nPerMPerPoundPerFoot,
} from "../../core/units/constants.ts";
import { degCFromDegF } from "../../core/units/temperature.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const tutorial: Source = {
  document: "public tutorial page on the ruling span",
  edition: "undated",
  mark: "seen",
  tolerance: "half the last printed digit",
};

describe(sourceTitle(tutorial), () => {
  it("ruling span of 100, 150 and 200 m is 165.83 m", () => {
    expectPrinted(rulingSpanM([100, 150, 200]), "165.83");
  });
});

const row: Source = {
  document:
    "spans of 120, 150 and 180 ft of the reference bundle (0.202 lb/ft, AE 844800 lbf, 6.4e-6 per degF) strung to 1 % of their ruling span at 60 degF",
  edition: "parabolic change of state",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(row), () => {
  const feet = [120, 150, 180];

  it("ruling span of 120, 150 and 180 ft is 155.885 ft", () => {
    expectPrinted(rulingSpanM(feet), "155.885");
  });

  it.each([
    [0, "592.2", ["7.4", "11.5", "16.6"]],
    [30, "481.2", ["9.1", "14.2", "20.4"]],
    [60, "393.6", ["11.1", "17.3", "24.9"]],
    [90, "328.9", ["13.3", "20.7", "29.9"]],
    [120, "282.2", ["15.5", "24.2", "34.8"]],
  ] as const)("at %d degF the row pulls %s lbf and sags %s in", (degF, horizontalLbf, sagsIn) => {
    const weightNPerM = 0.202 * nPerMPerPoundPerFoot;
    const table = stringingTable({
      spansM: feet.map((ft) => ft * metresPerFoot),
      temperaturesDegC: [degCFromDegF(degF)],
      axialStiffnessN: 844800 * newtonsPerPoundForce,
      expansionPerDegC: 6.4e-6 * 1.8,
      weightNPerM,
      limit: { weightNPerM, temperatureDegC: degCFromDegF(60), sagFrac: 0.01 },
      poles: "slipping",
    });
    if (!table.ok) throw new Error(table.fault.what);
    const cells = table.value[0] ?? [];
    expect(cells).toHaveLength(3);
    cells.forEach((cell, i) => {
      expectPrinted(cell.horizontalN / newtonsPerPoundForce, horizontalLbf);
      expectPrinted(cell.sagM / metresPerInch, sagsIn[i] ?? "");
    });
  });

  it.each([
    [0, "592.2"],
    [30, "481.2"],
    [90, "328.9"],
    [120, "282.2"],
  ])("added up span by span it pulls the same at %d degF: %s lbf", (degF, horizontalLbf) => {
    const load = { weightNPerM: 0.202 * nPerMPerPoundPerFoot };
    const spans = feet.map((ft) => ({ spanM: ft * metresPerFoot, riseM: 0, from: load, to: load }));
    const horizontalN = rowStringingN(spans, 0.01);
    expectPrinted(horizontalN / newtonsPerPoundForce, "393.6");
    const state = slippingSpans({
      spans,
      axialStiffnessN: 844800 * newtonsPerPoundForce,
      expansionPerDegC: 6.4e-6 * 1.8,
      horizontalN,
      fromDegC: degCFromDegF(60),
      toDegC: degCFromDegF(degF),
    });
    if (!state.ok) throw new Error(state.fault.what);
    expectPrinted(state.value.horizontalN / newtonsPerPoundForce, horizontalLbf);
  });
});

const exactRow: Source = {
  document: "a row on slopes with terminals in it, by pieces of catenaries that stretch along the arc",
  edition: "the strand of the whole row, its stretch taken off, is as long as before but for its warmth",
  mark: "computed",
  tolerance: "0.5 % of the tension, what the parabola is off by on such slopes",
};

describe(sourceTitle(exactRow), () => {
  const axialStiffnessN = 844800 * newtonsPerPoundForce;
  const expansionPerDegC = 6.4e-6 * 1.8;
  const from = { weightNPerM: 0.202 * nPerMPerPoundPerFoot };
  const spans = [
    { spanM: 36, riseM: 4, from, to: { weightNPerM: 13.66, pointLoads: [{ atM: 0.9144, weightN: 66 }] } },
    { spanM: 54, riseM: -7, from, to: { weightNPerM: 13.66, pointLoads: [{ atM: 52, weightN: 66 }] } },
    { spanM: 45, riseM: 0, from, to: { weightNPerM: 13.66 } },
  ];
  const strungN = rowStringingN(spans, 0.01);

  /** Length of the whole strand without its stretch, m. */
  function restM(loads: "from" | "to", horizontalN: number): number {
    return spans.reduce((sum, one) => {
      const hung = loadedCatenary({ spanM: one.spanM, riseM: one.riseM, ...one[loads], horizontalN });
      if (!hung.ok) throw new Error(hung.fault.what);
      return sum + hung.value.lengthM - hung.value.tensionAlongNxM / axialStiffnessN;
    }, 0);
  }

  it.each([
    [0, -17.8],
    [15.6, 0],
    [15.6, 48.9],
  ])("from %d to %d degC, ice coming on, the one tension of the row is met", (fromDegC, toDegC) => {
    const state = slippingSpans({ spans, axialStiffnessN, expansionPerDegC, horizontalN: strungN, fromDegC, toDegC });
    if (!state.ok) throw new Error(state.fault.what);
    const wantedM = restM("from", strungN) * (1 + expansionPerDegC * (toDegC - fromDegC));
    let [lowN, highN] = [strungN / 10, strungN * 10];
    for (let turn = 0; turn < 80; turn += 1) {
      const middleN = (lowN + highN) / 2;
      if (restM("to", middleN) > wantedM) lowN = middleN;
      else highN = middleN;
    }
    expect(Math.abs(state.value.horizontalN / lowN - 1)).toBeLessThan(0.005);
  });
});
