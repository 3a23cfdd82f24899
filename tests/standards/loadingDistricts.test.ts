import { describe, expect, it } from "vitest";
import { lineLoad } from "../../core/strand/lineLoad.ts";
import { metresPerInch, nPerMPerPoundPerFoot, pascalsPerPsf } from "../../core/units/constants.ts";
import { degFFromDegC } from "../../core/units/temperature.ts";
import { catalogueFigure } from "./catalogueFigure.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const nesc: Source = {
  document: "NESC Rule 250B, Tables 250-1 and 251-1; clearance conditions of Rules 230B and 232A",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "half the last digit",
};

const california: Source = {
  document: "California PUC General Order 95, Rules 43.1 and 43.2, wind on cylinders",
  edition: "web text; 25 and 130 degF from memory",
  mark: "seen",
  tolerance: "half the last digit",
};

/** District, ice in, wind psf, temperature degF, constant lb/ft, hottest degF. */
type District = readonly [id: string, ice: string, wind: string, degF: string, constant: string, hotDegF: string];

const nescRows: readonly District[] = [
  ["district-nesc-heavy", "0.50", "4.00", "0.0", "0.300", "120.0"],
  ["district-nesc-medium", "0.25", "4.00", "15.0", "0.200", "120.0"],
  ["district-nesc-light", "0", "9.00", "30.0", "0.050", "120.0"],
  ["district-nesc-warm-low", "0", "9.00", "50.0", "0.050", "120.0"],
  ["district-nesc-warm-high", "0.25", "4.00", "15.0", "0.200", "120.0"],
];
const californiaRows: readonly District[] = [
  ["district-go95-heavy", "0.50", "6.00", "0.0", "0", "130.0"],
  ["district-go95-light", "0", "8.00", "25.0", "0", "130.0"],
];

function expectDistrict(...[id, ice, wind, degF, constant, hotDegF]: District): void {
  const figure = (column: string) => catalogueFigure("loadingDistrict", id, column);
  expectPrinted(figure("iceM") / metresPerInch, ice);
  expectPrinted(figure("windPa") / pascalsPerPsf, wind);
  expectPrinted(degFFromDegC(figure("temperatureDegC")), degF);
  expectPrinted(figure("constantNPerM") / nPerMPerPoundPerFoot, constant);
  expectPrinted(degFFromDegC(figure("hotDegC")), hotDegF);
  expectPrinted(figure("iceDensityKgPerM3"), "913");
}

describe(sourceTitle(nesc), () => {
  it.each(nescRows)("%s: the iced clearance is checked at 32 degF", (id) => {
    expectPrinted(degFFromDegC(catalogueFigure("loadingDistrict", id, "icedDegC")), "32.0");
  });

  it.each(nescRows)("%s: %s in of ice, %s psf, %s degF, %s lb/ft, hottest %s degF", expectDistrict);
});

describe(sourceTitle(california), () => {
  it.each(californiaRows)("%s: %s in of ice, %s psf, %s degF, %s lb/ft, hottest %s degF", expectDistrict);
});

describe("every district of the catalogue", () => {
  it("adds its constant to the pull alone: the load its clearance is checked under is weight and ice", () => {
    for (const [id] of [...nescRows, ...californiaRows]) {
      const figure = (column: string) => catalogueFigure("loadingDistrict", id, column);
      const bundle = { diameterM: 0.68 * metresPerInch, weightNPerM: 0.202 * nPerMPerPoundPerFoot };
      const [iceM, iceDensityKgPerM3] = [figure("iceM"), figure("iceDensityKgPerM3")];
      const [windPa, constantNPerM] = [figure("windPa"), figure("constantNPerM")];
      const load = lineLoad({ ...bundle, iceM, iceDensityKgPerM3, windPa, constantNPerM });
      expect(load.totalNPerM - load.resultantNPerM).toBeCloseTo(constantNPerM, 12);
      expect(load.verticalNPerM).toBeCloseTo(bundle.weightNPerM + load.iceNPerM, 12);
    }
  });
});
