import { describe, it } from "vitest";
import {
  metresPerInch,
  newtonsPerPoundForce,
  nPerMPerPoundPerFoot,
  pascalsPerPsi,
} from "../../core/units/constants.ts";
import { catalogueFigure, settingsFigure } from "./catalogueFigure.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const messengers: Source = {
  document: "ASTM A475 table 1 and trade designations of messenger; area of seven wires of the printed diameter",
  edition: "A475-78",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(messengers), () => {
  // id, diameter in, weight lb/1000 ft, breaking strength lbf, area in2; the 2.2M is heavier than the 3/16 in of the table, 0.0211 in2
  it.each([
    ["strand-2-2m", "0.188", "80", "2400", "0.0232"],
    ["strand-6m", "0.3125", "225", "6000", "0.0653"],
    ["strand-6-6m", "0.250", "121", "6650", "0.0352"],
    ["strand-10m", "0.375", "273", "11500", "0.0792"],
    ["strand-16m", "0.4375", "399", "18000", "0.1156"],
    ["strand-25m", "0.500", "517", "25000", "0.1497"],
  ])("%s is %s in thick, weighs %s lb/1000 ft, breaks at %s lbf and has %s in2 of steel", (id, ...printed) => {
    const [diameter = "", weight = "", breaking = "", area = ""] = printed;
    const figure = (column: string) => catalogueFigure("strandType", id, column);
    expectPrinted(figure("diameterM") / metresPerInch, diameter);
    expectPrinted((1000 * figure("weightNPerM")) / nPerMPerPoundPerFoot, weight);
    expectPrinted(figure("breakingN") / newtonsPerPoundForce, breaking);
    expectPrinted(figure("areaM2") / metresPerInch ** 2, area);
    expectPrinted(figure("modulusPa") / pascalsPerPsi / 1e6, "24");
    expectPrinted((figure("expansionPerC") / 1.8) * 1e6, "6.4");
  });
});

const limit: Source = {
  document:
    "NESC Rule 261K2: messenger under the district load to 60 % of its rated breaking strength; T261-1, T253-1: guys",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(limit), () => {
  it("a guy of grade B may be pulled to 0.90 of its strength over the load factor 1.65", () => {
    expectPrinted(catalogueFigure("strengthLimit", "nesc-guy-loaded", "limitFrac") * 1.65, "0.90");
  });

  it("the strand may be pulled to 0.60 of its strength", () => {
    expectPrinted(catalogueFigure("strengthLimit", "nesc-strand-loaded", "limitFrac"), "0.60");
  });
});

const californiaStrength: Source = {
  document:
    "California PUC General Order 95, Rules 44 and 49.7-B: messenger and its guys at half of their breaking strength",
  edition: "49.7-B read; the factor 2.0 of Rule 44 from memory",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(californiaStrength), () => {
  it.each(["go95-strand-loaded", "go95-guy-loaded"])("%s is one over the factor 2.0", (id) => {
    expectPrinted(1 / catalogueFigure("strengthLimit", id, "limitFrac"), "2.0");
  });
});

const lashing: Source = {
  document: "0.045 in steel wire of 0.284 lb/in3 lashed round strand and cable",
  edition: "0.0054 lb/ft of wire, 0.006 lb/ft of span",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(lashing), () => {
  it("a foot of the wire weighs 0.0054 lb, and a foot of span is counted with 0.006 lb", () => {
    expectPrinted((Math.PI / 4) * 0.045 ** 2 * 12 * 0.284, "0.0054");
    expectPrinted(settingsFigure("lashingNPerM") / nPerMPerPoundPerFoot, "0.006");
  });
});
