import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakingFrac } from "../../core/strand/breakingFrac.ts";
import { catenarySpan } from "../../core/strand/catenary.ts";
import { catenarySagAtM } from "../../core/strand/catenaryAt.ts";
import { changeOfState } from "../../core/strand/changeOfState.ts";
import { clampedSpans } from "../../core/strand/clampedSpans.ts";
import { exactChangeOfState } from "../../core/strand/exactChangeOfState.ts";
import { guyLoad } from "../../core/strand/guyLoad.ts";
import { lashOn } from "../../core/strand/lashing.ts";
import { lineLoad } from "../../core/strand/lineLoad.ts";
import { linePull } from "../../core/strand/linePull.ts";
import { loadedCatenary } from "../../core/strand/loadedCatenary.ts";
import { loadedHeightM, loadedSagM } from "../../core/strand/loadedSpan.ts";
import { lowestPlace } from "../../core/strand/lowestPlace.ts";
import { catenaryLowPoint, parabolicLowPoint } from "../../core/strand/lowPoint.ts";
import { parabolicSagM, parabolicSpan } from "../../core/strand/parabola.ts";
import { returnWaveS, sagByReturnWaveM } from "../../core/strand/returnWave.ts";
import { rulingSpanM } from "../../core/strand/rulingSpan.ts";
import { sagAtM } from "../../core/strand/sagAt.ts";
import { leastSeparation } from "../../core/strand/separation.ts";
import { rowStringingN, slippingSpans } from "../../core/strand/slippingSpans.ts";
import { stringingHorizontalN } from "../../core/strand/stringing.ts";
import { stringingTable } from "../../core/strand/stringingTable.ts";
import { supportPulls } from "../../core/strand/supportPulls.ts";
import { windPressurePa } from "../../core/strand/windPressure.ts";

/** Any number at all, with figures of every size that a kernel must take more often than those it must refuse. */
const sized = (decades: number) =>
  fc.double({ min: -decades, max: decades, noNaN: true }).map((exponent) => 10 ** exponent);
const wild = fc.oneof(
  { weight: 6, arbitrary: sized(3) },
  { weight: 3, arbitrary: sized(30) },
  { weight: 1, arbitrary: sized(320) },
  { weight: 1, arbitrary: fc.double() },
  { weight: 1, arbitrary: fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, Number.MAX_VALUE, 5e-324) },
);
const part = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) },
  { weight: 1, arbitrary: wild },
);

/** A span with three loads at parts of its length. */
const span = fc
  .record({
    spanM: wild,
    riseM: wild,
    weightNPerM: wild,
    horizontalN: wild,
    nearHeightM: wild,
    loads: fc.array(fc.record({ part, weightN: wild }), { maxLength: 3 }),
  })
  .map(({ loads, ...plain }) => ({
    ...plain,
    pointLoads: loads.map((load) => ({ atM: load.part * plain.spanM, weightN: load.weightN })),
  }));

const change = fc
  .record({
    span,
    axialStiffnessN: wild,
    expansionPerDegC: wild,
    fromDegC: wild,
    toDegC: wild,
    toNPerM: wild,
  })
  .map((row) => ({
    spanM: row.span.spanM,
    riseM: row.span.riseM,
    axialStiffnessN: row.axialStiffnessN,
    expansionPerDegC: row.expansionPerDegC,
    from: { weightNPerM: row.span.weightNPerM, temperatureDegC: row.fromDegC, horizontalN: row.span.horizontalN },
    to: { weightNPerM: row.toNPerM, temperatureDegC: row.toDegC, pointLoads: row.span.pointLoads },
  }));

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value === "object" && value !== null) return Object.values(value).flatMap(numbersIn);
  return [];
}

/** Runs a kernel over wild figures: it refuses them, says that it found nothing, or answers in numbers. Some it must answer. */
function expectFinite<T>(figures: fc.Arbitrary<T>, kernel: (figures: T) => unknown): void {
  let answeredCount = 0;
  fc.assert(
    fc.property(figures, (given) => {
      let answer: unknown;
      try {
        answer = kernel(given);
      } catch (error) {
        if (error instanceof RangeError) return;
        throw error;
      }
      answeredCount += 1;
      if (!numbersIn(answer).every(Number.isFinite)) throw new Error(`not a number: ${JSON.stringify(answer)}`);
    }),
    { numRuns: 1000 },
  );
  expect(answeredCount).toBeGreaterThan(20);
}

describe("no kernel hands out NaN or infinity, whatever it is given", () => {
  const figures = fc.tuple(wild, wild, wild, wild, wild);

  it.each([
    ["catenary", catenarySpan],
    ["parabola", parabolicSpan],
    ["low point of the catenary", catenaryLowPoint],
    ["low point of the parabola", parabolicLowPoint],
    ["lowest place", lowestPlace],
    ["pulls on the supports", supportPulls],
  ] as const)("%s", (_name, kernel) => {
    expectFinite(span, kernel);
  });

  it.each([
    ["sag of the catenary at a station", catenarySagAtM],
    ["sag at a station", loadedSagM],
    ["height at a station", loadedHeightM],
  ] as const)("%s", (_name, kernel) => {
    expectFinite(fc.tuple(span, part), ([hung, along]) => kernel(hung, along * hung.spanM));
  });

  it("loaded catenary", () => {
    expectFinite(fc.tuple(span, part), ([hung, along]) => {
      const exact = loadedCatenary(hung);
      return exact.ok ? [exact.value, exact.value.sagM(along * hung.spanM)] : exact;
    });
  });

  it("sag and its tension", () => {
    expectFinite(figures, ([a, b, c]) => parabolicSagM(a, b, c));
    expectFinite(figures, ([a, b, c]) => stringingHorizontalN(a, b, c));
    expectFinite(fc.tuple(figures, part), ([[a, b, c], along]) => sagAtM(a, b, c, along * a));
  });

  it("change of state", () => {
    expectFinite(change, changeOfState);
    expectFinite(change, exactChangeOfState);
  });

  it("change of state settles for any figures from 1e-5 to 1e5", () => {
    const tame = sized(5);
    fc.assert(
      fc.property(tame, tame, tame, tame, tame, tame, tame, tame, (...f) => {
        const [spanM, axialStiffnessN, expansionPerDegC, w1, t1, horizontalN, w2, t2] = f;
        const state = changeOfState({
          spanM,
          axialStiffnessN,
          expansionPerDegC,
          from: { weightNPerM: w1, temperatureDegC: t1, horizontalN },
          to: { weightNPerM: w2, temperatureDegC: t2 },
        });
        expect(state.ok).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it("clamped spans, lashing and the stringing table", () => {
    expectFinite(fc.array(change, { maxLength: 2 }), clampedSpans);
    expectFinite(fc.tuple(change, wild, wild), ([pulled, addedNPerM, temperatureDegC]) =>
      lashOn(pulled, [{ addedNPerM, temperatureDegC }]),
    );
    expectFinite(fc.tuple(change, wild, fc.boolean()), ([{ spanM, from, to, ...strand }, sagFrac, isClamped]) =>
      stringingTable({
        ...strand,
        spansM: [spanM],
        temperaturesDegC: [to.temperatureDegC],
        weightNPerM: to.weightNPerM,
        limit: { weightNPerM: from.weightNPerM, temperatureDegC: from.temperatureDegC, sagFrac },
        poles: isClamped ? "clamped" : "slipping",
      }),
    );
  });

  it("ruling span", () => {
    expectFinite(fc.array(wild, { maxLength: 4 }), rulingSpanM);
  });

  it("a row that slips at its poles", () => {
    expectFinite(
      fc.tuple(figures, figures, fc.array(span, { maxLength: 4 })),
      ([[axialStiffnessN, expansionPerDegC, horizontalN, fromDegC, toDegC], [weightNPerM], hung]) => {
        const spans = hung.map(({ spanM, riseM, ...to }) => ({ spanM, riseM, from: { weightNPerM }, to }));
        return slippingSpans({ spans, axialStiffnessN, expansionPerDegC, horizontalN, fromDegC, toDegC });
      },
    );
    expectFinite(fc.tuple(figures, fc.array(span, { maxLength: 4 })), ([[weightNPerM, sagFrac], hung]) =>
      rowStringingN(
        hung.map(({ spanM, riseM }) => ({ spanM, riseM, from: { weightNPerM } })),
        sagFrac,
      ),
    );
  });

  it("load, wind and strength", () => {
    expectFinite(fc.tuple(figures, wild), ([[diameterM, weightNPerM, iceM, windPa, constantNPerM], density]) =>
      lineLoad({ diameterM, weightNPerM, iceM, windPa, constantNPerM, iceDensityKgPerM3: density }),
    );
    expectFinite(figures, ([gustMPerS, heightFactor, spanFactor, shapeFactor, importanceFactor]) =>
      windPressurePa({ gustMPerS, heightFactor, spanFactor, shapeFactor, importanceFactor }),
    );
    expectFinite(figures, ([tensionN, breakingN]) => breakingFrac(tensionN, breakingN));
  });

  it("stopwatch", () => {
    const count = fc.oneof(fc.integer({ min: 1, max: 20 }), wild);
    expectFinite(fc.tuple(wild, count), ([timeS, returnCount]) => sagByReturnWaveM(timeS, returnCount));
    expectFinite(fc.tuple(wild, count), ([sagM, returnCount]) => returnWaveS(sagM, returnCount));
  });

  it("pull of a line and load of a guy", () => {
    expectFinite(fc.tuple(wild, wild, part), ([behindN, aheadN, along]) => linePull(behindN, aheadN, along * Math.PI));
    expectFinite(figures, ([pullN, heightM, guyHeightM, leadM]) =>
      guyLoad({ pulls: [{ pullN, heightM }], guyHeightM, leadM }),
    );
  });

  it("separation of two wires", () => {
    expectFinite(fc.tuple(span, span), ([upper, lower]) =>
      leastSeparation(upper, { ...lower, spanM: upper.spanM, pointLoads: [] }),
    );
  });
});
