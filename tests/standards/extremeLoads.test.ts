import { describe, expect, it } from "vitest";
import { exactChangeOfState } from "../../core/strand/exactChangeOfState.ts";
import { lineLoad } from "../../core/strand/lineLoad.ts";
import { windPressurePa } from "../../core/strand/windPressure.ts";
import {
  metresPerFoot,
  metresPerInch,
  metresPerSecondPerMph,
  newtonsPerPoundForce,
  nPerMPerPoundPerFoot,
  pascalsPerPsf,
} from "../../core/units/constants.ts";
import { degCFromDegF, degFFromDegC } from "../../core/units/temperature.ts";
import { catalogueFigure, catalogueIds, settingsFigure } from "./catalogueFigure.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const extremes: Source = {
  document: "NESC Rules 250C and 250D, shape factor of 251B and 252B, Tables 250-2 and 250-3",
  edition: "2017/2023 numbering; when they apply: edition to be checked",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(extremes), () => {
  it("every extreme wind is at 60 degF on round wire of shape factor 1.0, asked for over 60 ft", () => {
    const ids = catalogueIds("extremeWind");
    expect(ids).toContain("extreme-wind-90");
    for (const id of ids) {
      const figure = (column: string) => catalogueFigure("extremeWind", id, column);
      expectPrinted(degFFromDegC(figure("temperatureDegC")), "60.0");
      expectPrinted(figure("shapeFactor"), "1.0");
      expectPrinted(figure("aboveM") / metresPerFoot, "60.0");
      expectPrinted(figure("gustMPerS") / metresPerSecondPerMph, id.replace("extreme-wind-", ""));
    }
  });

  it("every extreme ice with wind is at 15 degF, with no constant, asked for over 60 ft", () => {
    for (const id of catalogueIds("extremeIce")) {
      const figure = (column: string) => catalogueFigure("extremeIce", id, column);
      expectPrinted(degFFromDegC(figure("temperatureDegC")), "15.0");
      expectPrinted(figure("aboveM") / metresPerFoot, "60.0");
      expectPrinted(figure("iceDensityKgPerM3"), "913");
      expectPrinted((figure("iceM") / metresPerInch) * 100, id.split("-")[2] ?? "");
      expectPrinted(figure("gustMPerS") / metresPerSecondPerMph, id.split("-")[3] ?? "");
    }
  });

  it.each([
    ["wind-height-33", "33", "1.00"],
    ["wind-height-50", "50", "1.10"],
    ["wind-height-80", "80", "1.20"],
    ["wind-span-250", "250", "0.93"],
    ["wind-span-500", "500", "0.86"],
    ["wind-span-750", "750", "0.79"],
  ])("%s holds up to %s ft and is %s", (id, upTo, factor) => {
    expectPrinted(catalogueFigure("windFactor", id, "upToM") / metresPerFoot, upTo);
    expectPrinted(catalogueFigure("windFactor", id, "factor"), factor);
  });
});

const worked: Source = {
  document:
    "reference bundle (strand 0.250 in, cable 0.430 in, 0.202 lb/ft) up to 33 ft high in a span up to 250 ft: 0.00256 V^2 kz GRF I Cf on its diameter",
  edition: "factors from memory",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(worked), () => {
  const bundle = { diameterM: 0.68 * metresPerInch, weightNPerM: 0.202 * nPerMPerPoundPerFoot };

  it("a gust of 90 mph presses with 19.28 psf and loads it with 1.0928 lb/ft level, 1.1113 in all", () => {
    const wind = (column: string) => catalogueFigure("extremeWind", "extreme-wind-90", column);
    const windPa = windPressurePa({
      gustMPerS: wind("gustMPerS"),
      heightFactor: catalogueFigure("windFactor", "wind-height-33", "factor"),
      spanFactor: catalogueFigure("windFactor", "wind-span-250", "factor"),
      shapeFactor: wind("shapeFactor"),
      importanceFactor: wind("importanceFactor"),
    });
    expectPrinted(windPa / pascalsPerPsf, "19.28");
    const load = lineLoad({ ...bundle, iceM: 0, windPa, constantNPerM: 0 });
    expectPrinted(load.windNPerM / nPerMPerPoundPerFoot, "1.0928");
    expectPrinted(load.totalNPerM / nPerMPerPoundPerFoot, "1.1113");
  });

  it("half an inch of ice with a gust of 40 mph loads it with 0.9357 lb/ft down, 0.5734 level, 1.0974 in all", () => {
    const ice = (column: string) => catalogueFigure("extremeIce", "extreme-ice-50-40", column);
    const windPa = windPressurePa({
      gustMPerS: ice("gustMPerS"),
      heightFactor: 1,
      spanFactor: 1,
      shapeFactor: ice("shapeFactor"),
      importanceFactor: 1,
    });
    const load = lineLoad({
      ...bundle,
      iceM: ice("iceM"),
      iceDensityKgPerM3: ice("iceDensityKgPerM3"),
      windPa,
      constantNPerM: 0,
    });
    expectPrinted(load.verticalNPerM / nPerMPerPoundPerFoot, "0.9357");
    expectPrinted(load.windNPerM / nPerMPerPoundPerFoot, "0.5734");
    expectPrinted(load.totalNPerM / nPerMPerPoundPerFoot, "1.0974");
  });
});

const worker: Source = {
  document: "California PUC General Order 95, Rule 49.7-B, C: 200 lb of person and cable chair on the messenger",
  edition: "web text",
  mark: "seen",
  tolerance: "half the last digit",
};

describe(sourceTitle(worker), () => {
  it("a new route counts a worker of 200 lb", () => {
    expectPrinted(settingsFigure("workerLoadN") / newtonsPerPoundForce, "200");
  });

  it("in the reference span nobody pulls the strand harder than at midspan", () => {
    const spanM = 150 * metresPerFoot;
    const bare = { weightNPerM: 0.202 * nPerMPerPoundPerFoot, temperatureDegC: degCFromDegF(60) };
    const pulledN = (atFt: number): number => {
      const state = exactChangeOfState({
        spanM,
        axialStiffnessN: 0.0352 * 24e6 * newtonsPerPoundForce,
        expansionPerDegC: 6.4e-6 * 1.8,
        from: { ...bare, horizontalN: 378.75 * newtonsPerPoundForce },
        to: { ...bare, pointLoads: [{ atM: atFt * metresPerFoot, weightN: settingsFigure("workerLoadN") }] },
      });
      if (!state.ok) throw new Error(state.fault.what);
      return state.value.horizontalN;
    };
    const midspanN = pulledN(75);
    for (const atFt of [3, 20, 40, 60, 74, 76, 110, 147]) expect(pulledN(atFt)).toBeLessThan(midspanN);
  });
});

const strengths: Source = {
  document: "NESC Rules 261K2 and 261I: messenger to 80 % of its rated breaking strength under Rules 250C and 250D",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(strengths), () => {
  it.each(["nesc-strand-extremeWind", "nesc-strand-extremeIce"])("%s is 0.80", (id) => {
    expectPrinted(catalogueFigure("strengthLimit", id, "limitFrac"), "0.80");
  });
});
