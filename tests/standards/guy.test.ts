import { describe, expect, it } from "vitest";
import { guyLoad } from "../../core/strand/guyLoad.ts";
import { linePull } from "../../core/strand/linePull.ts";
import { radFromDeg } from "../../core/units/angle.ts";
import { metresPerFoot, newtonsPerPoundForce } from "../../core/units/constants.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const angleGuy: Source = {
  document: "messenger of 6000 lbf turning by 10 degrees, guy 24 ft up with a lead of 16 ft",
  edition: "F = 2 T sin(A / 2), G = F sqrt(h^2 + l^2) / l, V = F h / l",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(angleGuy), () => {
  const { pullN } = linePull(6000 * newtonsPerPoundForce, 6000 * newtonsPerPoundForce, radFromDeg(10));

  it("the line pulls the pole with 1045.87 lbf", () => {
    expectPrinted(pullN / newtonsPerPoundForce, "1045.87");
  });

  it("the guy bears 1885.5 lbf and presses the pole with 1568.8 lbf", () => {
    const heightM = 24 * metresPerFoot;
    const guy = guyLoad({ pulls: [{ pullN, heightM }], guyHeightM: heightM, leadM: 16 * metresPerFoot });
    expectPrinted(guy.guyN / newtonsPerPoundForce, "1885.5");
    expectPrinted(guy.verticalN / newtonsPerPoundForce, "1568.8");
    expect(guy.horizontalN).toBeCloseTo(pullN, 9);
  });
});
