import { describe, expect, it } from "vitest";
import { lineLoad } from "../../core/strand/lineLoad.ts";
import { parabolicSagM } from "../../core/strand/parabola.ts";
import { windPressurePa } from "../../core/strand/windPressure.ts";
import { degFromRad } from "../../core/units/angle.ts";
import {
  kgPerM3PerPoundPerCubicFoot,
  metresPerFoot,
  metresPerInch,
  newtonsPerPoundForce,
  nPerMPerPoundPerFoot,
  pascalsPerPsf,
  standardGravityMPerS2,
} from "../../core/units/constants.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

type UsCase = {
  diameterIn: number;
  weight: number;
  iceIn: number;
  windPsf: number;
  constant?: number;
  iceLbPerFt3?: number;
};

/** Loads in lb/ft from a case in the units of the American sources. */
function usLoads({ diameterIn, weight, iceIn, windPsf, constant = 0, iceLbPerFt3 = 57 }: UsCase) {
  const load = lineLoad({
    diameterM: diameterIn * metresPerInch,
    weightNPerM: weight * nPerMPerPoundPerFoot,
    iceM: iceIn * metresPerInch,
    iceDensityKgPerM3: iceLbPerFt3 * kgPerM3PerPoundPerCubicFoot,
    windPa: windPsf * pascalsPerPsf,
    constantNPerM: constant * nPerMPerPoundPerFoot,
  });
  return {
    ice: load.iceNPerM / nPerMPerPoundPerFoot,
    wind: load.windNPerM / nPerMPerPoundPerFoot,
    vertical: load.verticalNPerM / nPerMPerPoundPerFoot,
    resultant: load.resultantNPerM / nPerMPerPoundPerFoot,
    total: load.totalNPerM / nPerMPerPoundPerFoot,
    swingDeg: degFromRad(load.swingRad),
    swingRad: load.swingRad,
  };
}

const wireTable: Source = {
  document: "GO 95 Appendix B Table 21, galvanized solid wire; ice 57 lb/ft3 of Rule 43.1-B",
  edition: "web text",
  mark: "seen",
  tolerance: "half the last printed digit; one digit for three light figures that are not printed as rounded",
};

describe(sourceTitle(wireTable), () => {
  // gauge, diameter in, weight lb/ft, light wind, light resultant, heavy vertical, heavy wind, heavy resultant (lb/ft)
  const rows = [
    ["4", 0.238, 0.153, "0.1587", "0.220", "0.6119", "0.6190", "0.870"],
    ["6", 0.203, 0.112, "0.1353", "0.176", "0.5491", "0.6015", "0.814"],
    ["8", 0.165, 0.074, "0.1100", "0.133", "0.4875", "0.5825", "0.760"],
    ["9", 0.148, 0.06, "0.09867", "0.116", "0.4629", "0.5740", "0.737"],
    ["10", 0.134, 0.049, "0.08934", "0.102", "0.4432", "0.5670", "0.720"],
    ["11", 0.12, 0.039, "0.08000", "0.089", "0.4245", "0.5600", "0.703"],
    ["12", 0.109, 0.032, "0.07267", "0.079", "0.4107", "0.5545", "0.690"],
    ["14", 0.083, 0.019, "0.05533", "0.058", "0.3815", "0.5415", "0.662"],
  ] as const;

  it.each(rows)("gauge %s wire carries the printed light load", (gauge, diameterIn, weight, wind, resultant) => {
    const light = usLoads({ diameterIn, weight, iceIn: 0, windPsf: 8 });
    expectPrinted(light.wind, wind, gauge === "10" ? 1 : 0.5);
    expectPrinted(light.resultant, resultant, gauge === "9" || gauge === "14" ? 1 : 0.5);
  });

  it.each(rows)(
    "gauge %s wire carries the printed heavy load",
    (_gauge, diameterIn, weight, _w, _r, vertical, wind, resultant) => {
      const heavy = usLoads({ diameterIn, weight, iceIn: 0.5, windPsf: 6 });
      expectPrinted(heavy.vertical, vertical);
      expectPrinted(heavy.wind, wind);
      expectPrinted(heavy.resultant, resultant);
    },
  );
});

const conductor: Source = {
  document:
    "Gonen, Electric Power Transmission System Engineering, Example 13.2: inputs seen, program of its companion run again",
  edition: "2nd",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(conductor), () => {
  const inputs = { diameterIn: 1.093, weight: 5399 / 5280, iceIn: 0.5, windPsf: 4 };

  it("a conductor under half an inch of ice and 4 psf sags 4.68 ft, 4.43 ft of it vertical", () => {
    // The book rounds the ice coefficient 57 pi / 144 to 1.25: the ice that coefficient stands for.
    const load = usLoads({ ...inputs, iceLbPerFt3: (1.25 * 144) / Math.PI });
    expectPrinted(load.ice, "0.9956");
    expectPrinted(load.vertical, "2.0182");
    expectPrinted(load.wind, "0.6977");
    expectPrinted(load.resultant, "2.1354");
    const sagM = parabolicSagM(
      500 * metresPerFoot,
      load.resultant * nPerMPerPoundPerFoot,
      14250 * newtonsPerPoundForce,
    );
    expectPrinted(sagM / metresPerFoot, "4.68");
    expectPrinted((sagM / metresPerFoot) * Math.cos(load.swingRad), "4.43");
  });

  it("ice of 57 lb/ft3 itself weighs 0.9905 lb/ft on that conductor", () => {
    expectPrinted(usLoads(inputs).ice, "0.9905");
  });
});

const textbook: Source = {
  document: "textbook chapter 7, Mechanical design of transmission lines, p. 161, Examples 7.1 and 7.2",
  edition: "title not shown in the copy",
  mark: "seen",
  tolerance: "half the last printed digit; one digit of the unrounded sag",
};

describe(sourceTitle(textbook), () => {
  const newtonsPerKg = standardGravityMPerS2;

  it("a conductor of 0.95 cm in a wind of 40 kg/m2 sags 4 m in 160 m", () => {
    const load = lineLoad({
      diameterM: 0.0095,
      weightNPerM: 0.65 * newtonsPerKg,
      iceM: 0,
      windPa: 40 * newtonsPerKg,
      constantNPerM: 0,
    });
    const areaCm2 = (Math.PI / 4) * 0.95 ** 2;
    const sagM = parabolicSagM(160, load.resultantNPerM, ((4250 * areaCm2) / 5) * newtonsPerKg);
    expectPrinted(load.windNPerM / newtonsPerKg, "0.38");
    expectPrinted(sagM, "4");
    expectPrinted(sagM, "3.999");
  });

  it("a conductor of 19.5 mm with 13 mm of ice sags 6.4 m in 275 m", () => {
    const load = lineLoad({
      diameterM: 0.0195,
      weightNPerM: 0.85 * newtonsPerKg,
      iceM: 0.013,
      iceDensityKgPerM3: 910,
      windPa: 39 * newtonsPerKg,
      constantNPerM: 0,
    });
    const sagM = parabolicSagM(275, load.resultantNPerM, (8000 / 2) * newtonsPerKg);
    expectPrinted(load.iceNPerM / newtonsPerKg, "1.2079");
    expectPrinted(load.windNPerM / newtonsPerKg, "1.7745");
    expectPrinted(load.resultantNPerM / newtonsPerKg, "2.7173");
    expectPrinted(sagM, "6.4");
    expectPrinted(sagM, "6.42");
  });
});

const bundle: Source = {
  document: "reference bundle (strand 0.250 in, cable 0.430 in, 0.202 lb/ft) in the NESC Rule 250B districts",
  edition: "districts and constants from memory",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(bundle), () => {
  const districts = [
    ["heavy", { iceIn: 0.5, windPsf: 4, constant: 0.3 }, ["0.7337", "0.5600", "0.9357", "1.0905", "1.3905", "30.90"]],
    ["medium", { iceIn: 0.25, windPsf: 4, constant: 0.2 }, ["0.2891", "0.3933", "0.4911", "0.6292", "0.8292", "38.69"]],
    ["light", { iceIn: 0, windPsf: 9, constant: 0.05 }, ["0", "0.5100", "0.2020", "0.5485", "0.5985", "68.39"]],
  ] as const;

  it.each(districts)(
    "the %s district loads the bundle as worked",
    (_district, weather, [ice, wind, vertical, resultant, total, swingDeg]) => {
      const load = usLoads({ diameterIn: 0.68, weight: 0.202, ...weather });
      expectPrinted(load.ice, ice);
      expectPrinted(load.wind, wind);
      expectPrinted(load.vertical, vertical);
      expectPrinted(load.resultant, resultant);
      expectPrinted(load.total, total);
      expectPrinted(load.swingDeg, swingDeg);
    },
  );

  it("ice of 913 kg/m3 is 57 lb/ft3 to the kilogram", () => {
    expect(Math.round(57 * kgPerM3PerPoundPerCubicFoot)).toBe(913);
  });
});

const extremeWind: Source = {
  document: "NESC Rule 250C, 0.00256 V^2 kz GRF I Cf psf; Tables 250-2 and 250-3",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "half the last digit of the arithmetic",
};

describe(sourceTitle(extremeWind), () => {
  const gustMPerS = (90 * 5280 * metresPerFoot) / 3600;
  const bare = { gustMPerS, heightFactor: 1, spanFactor: 1, shapeFactor: 1, importanceFactor: 1 };

  it("a gust of 90 mph presses with 20.736 psf before factors", () => {
    expectPrinted(windPressurePa(bare) / pascalsPerPsf, "20.736");
  });

  it("on a wire up to 33 ft high in a span up to 250 ft it presses with 0.93 of that", () => {
    expectPrinted(windPressurePa({ ...bare, spanFactor: 0.93 }) / pascalsPerPsf, "19.284");
  });
});
