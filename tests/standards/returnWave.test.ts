import { Solver } from "odex";
import { describe, expect, it } from "vitest";
import { catenarySpan } from "../../core/strand/catenary.ts";
import { returnWaveS, sagByReturnWaveM } from "../../core/strand/returnWave.ts";
import { metresPerInch, standardGravityMPerS2 } from "../../core/units/constants.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const bulletin: Source = {
  document: "RUS Bulletin 1726C-115, Checking Sag in a Conductor by the Return Wave Method, D = 48.3 (T / 2N)^2 inches",
  edition: "24 September 1998",
  mark: "seen",
  tolerance: "the three digits of its coefficient",
};

describe(sourceTitle(bulletin), () => {
  it("one return in two seconds is a sag of 48.3 in", () => {
    expectPrinted(sagByReturnWaveM(2, 1) / metresPerInch, "48.3");
  });

  it("ten returns in 12 s are a sag of 48.3 x 0.36 = 17.4 in", () => {
    expectPrinted(sagByReturnWaveM(12, 10) / metresPerInch, "17.4");
  });
});

const wave: Source = {
  document: "wave running along the catenary with the speed sqrt(g T / w) of the tension at each place (odex)",
  edition: "Hairer and Wanner, ODEX, relative tolerance 1e-13",
  mark: "computed",
  tolerance: "the error the kernel states",
};

describe(sourceTitle(wave), () => {
  it.each([
    [0.01, 0.00014],
    [0.05, 0.0034],
  ])("at a sag of %d of the span the stopwatch reads high by less than %d of the sag", (sagFrac, errorFrac) => {
    const span = { spanM: 45.72, riseM: 0, weightNPerM: 2.948, horizontalN: (2.948 * 45.72) / (8 * sagFrac) };
    const parameterM = span.horizontalN / span.weightNPerM;
    const solver = new Solver(1);
    solver.relativeTolerance = 1e-13;
    solver.absoluteTolerance = 1e-13;
    // ds = cosh(x / c) dx at the speed sqrt(g c cosh(x / c))
    const slowness = (x: number) => [Math.sqrt(Math.cosh(x / parameterM) / (standardGravityMPerS2 * parameterM))];
    const [onceS = Number.NaN] = solver.solve(slowness, -span.spanM / 2, [0], span.spanM / 2).y;
    const error = sagByReturnWaveM(2 * onceS, 1) / catenarySpan(span).sagM - 1;
    expect(error).toBeGreaterThan(0);
    expect(error).toBeLessThan(errorFrac);
  });

  it("the time for a wanted sag is the time that reads as that sag", () => {
    expect(sagByReturnWaveM(returnWaveS(0.4572, 5), 5)).toBeCloseTo(0.4572, 12);
  });
});
