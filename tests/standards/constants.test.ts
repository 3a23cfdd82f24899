import { describe, it } from "vitest";
import {
  metresPerUsSurveyFoot,
  newtonsPerPoundForce,
  nPerMPerPoundPerFoot,
  pascalsPerPsf,
  pascalsPerPsi,
} from "../../core/units/constants.ts";
import { degCFromDegF } from "../../core/units/temperature.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const factors: Source = {
  document: "exact factors of US customary units to SI",
  edition: "international foot and pound of 1959",
  mark: "memory",
  tolerance: "half the last printed digit",
};

describe(sourceTitle(factors), () => {
  it("a pound of force, per foot, per square foot and per square inch have their known sizes", () => {
    expectPrinted(newtonsPerPoundForce, "4.4482216152605");
    expectPrinted(nPerMPerPoundPerFoot, "14.593903");
    expectPrinted(pascalsPerPsf, "47.880259");
    expectPrinted(pascalsPerPsi, "6894.757");
  });

  it("a US survey foot is 2 parts in a million longer than a foot", () => {
    expectPrinted(metresPerUsSurveyFoot / 0.3048, "1.000002");
  });

  it("60 degrees Fahrenheit are 15.56 degrees Celsius", () => {
    expectPrinted(degCFromDegF(60), "15.56");
  });
});
