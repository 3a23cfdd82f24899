import { describe, expect, it } from "vitest";
import { catenarySpan } from "../../core/strand/catenary.ts";
import { catenarySagAtM } from "../../core/strand/catenaryAt.ts";
import type { HangingSpan } from "../../core/strand/hangingSpan.ts";
import { loadedSagM } from "../../core/strand/loadedSpan.ts";
import { catenaryLowPoint, parabolicLowPoint } from "../../core/strand/lowPoint.ts";
import { parabolicSpan } from "../../core/strand/parabola.ts";
import { metresPerFoot, newtonsPerPoundForce, nPerMPerPoundPerFoot } from "../../core/units/constants.ts";
import { integrateSpan } from "./cableEquation.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const integration: Source = {
  document: "cable equation y'' = (w / H) sqrt(1 + y'^2) integrated numerically from support to support (odex)",
  edition: "Hairer and Wanner, ODEX, relative tolerance 1e-13",
  mark: "computed",
  tolerance: "a nanometre for the catenary; the errors the parabola states",
};

/** A span of 45.72 m; rise as part of it, sag of the level span as part of it. */
function spanOf(riseFrac: number, sagFrac: number): HangingSpan {
  const spanM = 45.72;
  return { spanM, riseM: riseFrac * spanM, weightNPerM: 2.948, horizontalN: (2.948 * spanM) / (8 * sagFrac) };
}

const partsOfSpan = [0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98];
const spans = [-0.4, -1 / 15, 0, 0.01, 1 / 15, 0.2, 0.4].flatMap((riseFrac) =>
  [0.005, 0.01, 0.03, 0.1].map((sagFrac) => [riseFrac, sagFrac] as const),
);

describe(sourceTitle(integration), () => {
  it.each(spans)(
    "rising by %d of the span at a sag of %d it hangs, at every station, as the catenary says",
    (...parts) => {
      const span = spanOf(...parts);
      const atM = partsOfSpan.map((part) => part * span.spanM);
      const integrated = integrateSpan(span, atM);
      atM.forEach((at, i) => {
        const sagM = (span.riseM * at) / span.spanM - (integrated.heightsM[i] ?? Number.NaN);
        expect(Math.abs(catenarySagAtM(span, at) - sagM), `at ${at} m`).toBeLessThan(1e-9);
      });
      const curve = catenarySpan(span);
      expect(Math.abs(catenarySagAtM(span, span.spanM / 2) - curve.sagM)).toBeLessThan(1e-12);
      expect(Math.abs(curve.lengthM - integrated.lengthM)).toBeLessThan(1e-9);
    },
  );

  it.each(spans)("rising by %d of the span at a sag of %d its slope at the low point is level", (...parts) => {
    const span = spanOf(...parts);
    const { lowPointM } = catenarySpan(span);
    const lowerIsNear = span.riseM >= 0;
    // the slope grows with the arc: w s / H from the low point
    const fromLowM = lowerIsNear ? -lowPointM : lowPointM - span.spanM;
    const parameterM = span.horizontalN / span.weightNPerM;
    expect(Math.sinh(fromLowM / parameterM)).toBeCloseTo(integrateSpan(span).nearSlope, 9);
  });

  it("the parabola with its weight along the chord keeps within its stated error on slopes up to 0.4", () => {
    for (const riseFrac of [0, 0.1, 0.4]) {
      for (const [sagFrac, errorFrac] of [
        [0.01, 0.00014],
        [0.05, 0.0034],
      ] as const) {
        const span = spanOf(riseFrac, sagFrac);
        const error = 1 - loadedSagM(span, span.spanM / 2) / catenarySagAtM(span, span.spanM / 2);
        expect(error).toBeGreaterThan(0);
        expect(error).toBeLessThan(errorFrac);
      }
    }
  });

  it("the parabola with its weight along the level is 0.5 % short in sag at a rise of a tenth", () => {
    const span = spanOf(0.1, 0.01);
    expectPrinted(100 * (1 - parabolicSpan(span).sagM / catenarySpan(span).sagM), "0.5");
  });
});

const referenceSpan: Source = {
  document: "reference span: 150 ft of 0.202 lb/ft at 378.75 lbf, supports 10 ft apart in height",
  edition: "formulas of the parabola and the catenary",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(referenceSpan), () => {
  const span = (riseFt: number): HangingSpan => ({
    spanM: 150 * metresPerFoot,
    riseM: riseFt * metresPerFoot,
    weightNPerM: 0.202 * nPerMPerPoundPerFoot,
    horizontalN: 378.75 * newtonsPerPoundForce,
  });

  it("the low point lies outside the span, so nothing of it hangs below the lower support", () => {
    expectPrinted(catenaryLowPoint(span(10)).lowPointM / metresPerFoot, "-49.874");
    expectPrinted(parabolicLowPoint(span(10)).lowPointM / metresPerFoot, "-50.000");
    expect(catenaryLowPoint(span(10)).belowLowerM).toBe(0);
    expect(parabolicLowPoint(span(10)).belowLowerM).toBe(0);
  });

  it("with supports 2 ft apart the parabola turns 50 ft from the lower one, 0.667 ft below it", () => {
    const lowPoint = parabolicLowPoint(span(2));
    expectPrinted(lowPoint.lowPointM / metresPerFoot, "50.000");
    expectPrinted(lowPoint.belowLowerM / metresPerFoot, "0.667");
  });

  it("the integrated strand is lowest where the catenary turns", () => {
    const { lowPointM, belowLowerM } = catenaryLowPoint(span(2));
    const { heightsM } = integrateSpan(span(2), [lowPointM - 0.5, lowPointM, lowPointM + 0.5]);
    const [beforeM = 0, lowestM = 0, afterM = 0] = heightsM;
    expect(lowestM).toBeCloseTo(-belowLowerM, 9);
    expect(beforeM).toBeCloseTo(afterM, 9);
    expect(beforeM).toBeGreaterThan(lowestM);
  });
});
