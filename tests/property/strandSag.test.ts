import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catenarySpan } from "../../core/strand/catenary.ts";
import { type ChangeOfState, changeOfState } from "../../core/strand/changeOfState.ts";
import { parabolicSagM, parabolicSpan } from "../../core/strand/parabola.ts";
import { sagAtM } from "../../core/strand/sagAt.ts";
import { stringingHorizontalN } from "../../core/strand/stringing.ts";

const spanM = fc.double({ min: 10, max: 150, noNaN: true });
const weightNPerM = fc.double({ min: 0.5, max: 40, noNaN: true });
const sagFrac = fc.double({ min: 0.002, max: 0.05, noNaN: true });
const temperatureDegC = fc.double({ min: -40, max: 60, noNaN: true });

const strung = fc
  .record({
    spanM,
    weightNPerM,
    sagFrac,
    temperatureDegC,
    toWeightNPerM: weightNPerM,
    toTemperatureDegC: temperatureDegC,
  })
  .map(
    (row): ChangeOfState => ({
      spanM: row.spanM,
      axialStiffnessN: 3.76e6,
      expansionPerDegC: 1.15e-5,
      from: {
        weightNPerM: row.weightNPerM,
        temperatureDegC: row.temperatureDegC,
        horizontalN: stringingHorizontalN(row.spanM, row.weightNPerM, row.sagFrac),
      },
      to: { weightNPerM: row.toWeightNPerM, temperatureDegC: row.toTemperatureDegC },
    }),
  );

function settledN(change: ChangeOfState): number {
  const state = changeOfState(change);
  if (!state.ok) throw new Error(state.fault.what);
  return state.value.horizontalN;
}

describe("what any strand keeps to", () => {
  it("tension and sag stay positive through any change of load and temperature", () => {
    fc.assert(
      fc.property(strung, (change) => {
        const horizontalN = settledN(change);
        expect(horizontalN).toBeGreaterThan(0);
        expect(parabolicSagM(change.spanM, change.to.weightNPerM, horizontalN)).toBeGreaterThan(0);
      }),
    );
  });

  it("tension falls as the strand warms", () => {
    fc.assert(
      fc.property(strung, fc.double({ min: 0.1, max: 50, noNaN: true }), (change, riseDegC) => {
        const warmer = { ...change, to: { ...change.to, temperatureDegC: change.to.temperatureDegC + riseDegC } };
        expect(settledN(warmer)).toBeLessThan(settledN(change));
      }),
    );
  });

  it("more weight at one temperature sags more and pulls more", () => {
    fc.assert(
      fc.property(strung, fc.double({ min: 0.01, max: 20, noNaN: true }), (change, addedNPerM) => {
        const heavier = { ...change, to: { ...change.to, weightNPerM: change.to.weightNPerM + addedNPerM } };
        const lightN = settledN(change);
        const heavyN = settledN(heavier);
        expect(heavyN).toBeGreaterThan(lightN);
        expect(parabolicSagM(change.spanM, heavier.to.weightNPerM, heavyN)).toBeGreaterThan(
          parabolicSagM(change.spanM, change.to.weightNPerM, lightN),
        );
      }),
    );
  });

  it("going to a state and back returns the tension it was strung to", () => {
    fc.assert(
      fc.property(strung, (change) => {
        const horizontalN = settledN(change);
        const back = settledN({
          ...change,
          from: { ...change.to, horizontalN },
          to: { weightNPerM: change.from.weightNPerM, temperatureDegC: change.from.temperatureDegC },
        });
        expect(Math.abs(back / change.from.horizontalN - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("no change of state is no change of tension", () => {
    fc.assert(
      fc.property(strung, (change) => {
        expect(settledN({ ...change, to: change.from }) / change.from.horizontalN).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("parabola and catenary", () => {
  it("the catenary sags more by L^2 / 48 c^2 of the sag, so the two meet as the span tightens", () => {
    fc.assert(
      fc.property(spanM, weightNPerM, sagFrac, (span, weight, frac) => {
        const horizontalN = stringingHorizontalN(span, weight, frac);
        const hanging = { spanM: span, riseM: 0, weightNPerM: weight, horizontalN };
        const excess = catenarySpan(hanging).sagM / parabolicSpan(hanging).sagM - 1;
        const half = (span * weight) / (2 * horizontalN);
        const leading = half ** 2 / 12;
        // the next term of cosh is half^4 / 360
        expect(Math.abs(excess - leading)).toBeLessThan(half ** 4 / 300 + 1e-13);
      }),
    );
  });

  it("the strand is longer than its chord and pulls hardest at the upper support", () => {
    fc.assert(
      fc.property(
        spanM,
        weightNPerM,
        sagFrac,
        fc.double({ min: -3, max: 3, noNaN: true }),
        (span, weight, frac, riseM) => {
          const hanging = {
            spanM: span,
            riseM,
            weightNPerM: weight,
            horizontalN: stringingHorizontalN(span, weight, frac),
          };
          const catenary = catenarySpan(hanging);
          expect(catenary.lengthM).toBeGreaterThan(Math.hypot(span, riseM));
          expect(catenary.supportTensionN).toBeGreaterThan(hanging.horizontalN);
          expect(catenary.lowPointM).toBeLessThanOrEqual(span / 2);
          expect(catenarySpan({ ...hanging, riseM: -riseM })).toEqual(catenary);
        },
      ),
    );
  });

  it("sag is the same from either pole and nowhere more than at midspan", () => {
    const stationFrac = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(spanM, weightNPerM, sagFrac, stationFrac, (span, weight, frac, along) => {
        const horizontalN = stringingHorizontalN(span, weight, frac);
        const stationM = along * span;
        const hereM = sagAtM(span, weight, horizontalN, stationM);
        expect(hereM).toBeCloseTo(sagAtM(span, weight, horizontalN, span - stationM), 9);
        expect(hereM).toBeLessThanOrEqual(parabolicSagM(span, weight, horizontalN));
        expect(hereM).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
