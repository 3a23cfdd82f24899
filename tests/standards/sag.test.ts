import { describe, expect, it } from "vitest";
import { catenarySpan } from "../../core/strand/catenary.ts";
import { parabolicSagM, parabolicSpan } from "../../core/strand/parabola.ts";
import { sagAtM } from "../../core/strand/sagAt.ts";
import { stringingHorizontalN } from "../../core/strand/stringing.ts";
import {
  metresPerFoot,
  newtonsPerPoundForce,
  nPerMPerPoundPerFoot,
  standardGravityMPerS2,
} from "../../core/units/constants.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

/** A span in feet, lb/ft and lbf, hung by a method and read in feet and lbf. */
function hangUs(method: typeof catenarySpan, spanFt: number, riseFt: number, weight: number, horizontalLbf: number) {
  const curve = method({
    spanM: spanFt * metresPerFoot,
    riseM: riseFt * metresPerFoot,
    weightNPerM: weight * nPerMPerPoundPerFoot,
    horizontalN: horizontalLbf * newtonsPerPoundForce,
  });
  return {
    sagFt: curve.sagM / metresPerFoot,
    lengthFt: curve.lengthM / metresPerFoot,
    lowPointFt: curve.lowPointM / metresPerFoot,
    supportLbf: curve.supportTensionN / newtonsPerPoundForce,
  };
}

const catenaryExample: Source = {
  document: "Gonen, Electric Power Transmission System Engineering, Example 13.1, output printed in a public companion",
  edition: "2nd",
  mark: "seen",
  tolerance: "half the last printed digit",
};

describe(sourceTitle(catenaryExample), () => {
  const weight = 4122 / 5280;
  const horizontalLbf = 1600 * weight;

  it("a catenary of parameter 1600 ft in 500 ft is 502.037 ft long, sags 19.6 ft and pulls 1264.4 lb", () => {
    const curve = hangUs(catenarySpan, 500, 0, weight, horizontalLbf);
    expectPrinted(curve.lengthFt, "502.037");
    expectPrinted(curve.sagFt, "19.6");
    expectPrinted(curve.supportLbf, "1264.4");
    expectPrinted(horizontalLbf, "1249.1");
  });

  it("the series length of that span is 502.0345 ft", () => {
    expectPrinted(hangUs(parabolicSpan, 500, 0, weight, horizontalLbf).lengthFt, "502.0345");
  });

  it("the parabola of that sag pulls 1246.55 lb", () => {
    const sagFrac = hangUs(catenarySpan, 500, 0, weight, horizontalLbf).sagFt / 500;
    const horizontalN = stringingHorizontalN(500 * metresPerFoot, weight * nPerMPerPoundPerFoot, sagFrac);
    expectPrinted(horizontalN / newtonsPerPoundForce, "1246.55");
  });
});

const weightExample: Source = {
  document: "textbook chapter 2.5, Example 2.5.1, p. 198",
  edition: "title not shown in the copy",
  mark: "seen",
  tolerance: "half the last printed digit",
};

describe(sourceTitle(weightExample), () => {
  it("a conductor sagging 2 m in 250 m at half of 5758 kg weighs 184.29 kg in the span", () => {
    const horizontalN = (5758 / 2) * standardGravityMPerS2;
    // weight per length for a sag of 2 m: the sag is proportional to it
    const weightNPerM = 2 / parabolicSagM(250, 1, horizontalN);
    const { lengthM } = parabolicSpan({ spanM: 250, riseM: 0, weightNPerM, horizontalN });
    expectPrinted((weightNPerM * lengthM) / standardGravityMPerS2, "184.29");
    expectPrinted(lengthM, "250.0427");
  });
});

const squareRule: Source = {
  document: "GO 95 Appendix C(c), sags of spans on one tension go as the squares of their lengths",
  edition: "original of 1941: method seen; figures worked out",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(squareRule), () => {
  it("where 300 ft sags 5.30 ft, 250 ft sags 3.68 ft and 200 ft 2.36 ft on the same tension", () => {
    const horizontalN = stringingHorizontalN(300 * metresPerFoot, 3, 5.3 / 300);
    expectPrinted(parabolicSagM(250 * metresPerFoot, 3, horizontalN) / metresPerFoot, "3.68");
    expectPrinted(parabolicSagM(200 * metresPerFoot, 3, horizontalN) / metresPerFoot, "2.36");
  });
});

const referenceSpan: Source = {
  document: "reference span: 150 ft of 0.202 lb/ft strung to 1 % sag, 378.75 lbf",
  edition: "formulas of the parabola and the catenary",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(referenceSpan), () => {
  it("1 % of sag in 150 ft of 0.202 lb/ft is a pull of 378.75 lbf", () => {
    const horizontalN = stringingHorizontalN(150 * metresPerFoot, 0.202 * nPerMPerPoundPerFoot, 0.01);
    expectPrinted(horizontalN / newtonsPerPoundForce, "378.75");
  });

  it("the level span hangs alike by both methods to the third digit of a foot", () => {
    const catenary = hangUs(catenarySpan, 150, 0, 0.202, 378.75);
    const parabola = hangUs(parabolicSpan, 150, 0, 0.202, 378.75);
    expectPrinted(catenary.sagFt, "1.50020");
    expectPrinted(parabola.sagFt, "1.50000");
    expectPrinted(catenary.lengthFt, "150.040003");
    expectPrinted(parabola.lengthFt, "150.040000");
    expectPrinted(catenary.supportLbf, "379.053");
    expectPrinted(parabola.supportLbf, "379.053");
  });

  it("with supports 10 ft apart in height the low point lies 50 ft before the lower one", () => {
    const catenary = hangUs(catenarySpan, 150, 10, 0.202, 378.75);
    const parabola = hangUs(parabolicSpan, 150, 10, 0.202, 378.75);
    expectPrinted(parabola.lowPointFt, "-50.000");
    expectPrinted(catenary.lowPointFt, "-49.874");
    expectPrinted(parabola.sagFt, "1.500");
    expectPrinted(parabola.lengthFt, "150.3733");
    expectPrinted(catenary.lengthFt, "150.37288");
  });

  it("the inclined catenary sags more than the level one by the length of its chord", () => {
    // From the catenary itself: D = c (cosh(L / 2c) - 1) sqrt(1 + (h / S0)^2), with S0 the length of the level span.
    const catenary = hangUs(catenarySpan, 150, 10, 0.202, 378.75);
    expect(catenary.sagFt).toBeCloseTo(1.5002 * Math.hypot(1, 10 / 150.040003), 6);
  });

  it("3 ft from the pole the plain span sags 0.1176 ft", () => {
    const sagM = sagAtM(
      150 * metresPerFoot,
      0.202 * nPerMPerPoundPerFoot,
      378.75 * newtonsPerPoundForce,
      3 * metresPerFoot,
    );
    expectPrinted(sagM / metresPerFoot, "0.1176");
  });
});
