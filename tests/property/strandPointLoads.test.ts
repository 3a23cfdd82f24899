import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ChangeOfState, changeOfState } from "../../core/strand/changeOfState.ts";
import { exactChangeOfState } from "../../core/strand/exactChangeOfState.ts";
import { loadedCatenary } from "../../core/strand/loadedCatenary.ts";
import { loadedHeightM, loadedSagM } from "../../core/strand/loadedSpan.ts";
import { lowestPlace } from "../../core/strand/lowestPlace.ts";
import type { PointLoad } from "../../core/strand/pointLoad.ts";
import { rulingSpanM } from "../../core/strand/rulingSpan.ts";
import { leastSeparation, separationAtM } from "../../core/strand/separation.ts";
import { stringingHorizontalN } from "../../core/strand/stringing.ts";
import { supportPulls } from "../../core/strand/supportPulls.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const part = between(0, 1);

/** A strung span on a slope of up to 20 %, and a state with up to five loads in it. */
const hung = fc
  .record({
    spanM: between(10, 120),
    slope: between(-0.2, 0.2),
    weightNPerM: between(1, 10),
    sagFrac: between(0.004, 0.04),
    toNPerM: between(1, 30),
    warmerDegC: between(-40, 40),
    loads: fc.array(fc.record({ part, weightN: between(0, 1000) }), { maxLength: 5 }),
  })
  .map(({ spanM, slope, weightNPerM, sagFrac, toNPerM, warmerDegC, loads }): ChangeOfState => {
    const pointLoads = loads.map((load) => ({ atM: load.part * spanM, weightN: load.weightN }));
    return {
      spanM,
      riseM: slope * spanM,
      axialStiffnessN: 3.76e6,
      expansionPerDegC: 1.15e-5,
      from: {
        weightNPerM,
        temperatureDegC: 15,
        horizontalN: stringingHorizontalN(spanM, weightNPerM, sagFrac),
      },
      to: { weightNPerM: toNPerM, temperatureDegC: 15 + warmerDegC, pointLoads },
    };
  });

function settledN(change: ChangeOfState): number {
  const state = changeOfState(change);
  if (!state.ok) throw new Error(state.fault.what);
  return state.value.horizontalN;
}

function settle({ spanM, riseM = 0, ...change }: ChangeOfState) {
  const { weightNPerM, pointLoads = [] } = change.to;
  return { spanM, riseM, weightNPerM, pointLoads, horizontalN: settledN({ spanM, riseM, ...change }) };
}

const mirrored = (loads: readonly PointLoad[], spanM: number) =>
  loads.map(({ atM, weightN }) => ({ atM: Math.max(0, spanM - atM), weightN }));

describe("a span with terminals, coils and workers in it", () => {
  it("hangs alike from either pole", () => {
    fc.assert(
      fc.property(hung, part, (change, along) => {
        const here = settle(change);
        const pointLoads = mirrored(here.pointLoads, change.spanM);
        const there = settle({ ...change, riseM: -here.riseM, to: { ...change.to, pointLoads } });
        expect(there.horizontalN / here.horizontalN).toBeCloseTo(1, 9);
        const atM = along * change.spanM;
        expect(loadedSagM(there, change.spanM - atM)).toBeCloseTo(loadedSagM(here, atM), 8);
        expect(supportPulls(there).nearTensionN / supportPulls(here).farTensionN).toBeCloseTo(1, 9);
      }),
    );
  });

  it("loads of no weight change nothing, and a load in two halves hangs as one", () => {
    fc.assert(
      fc.property(hung, (change) => {
        const { pointLoads = [] } = change.to;
        const withLoads = (loads: readonly PointLoad[]) =>
          settledN({ ...change, to: { ...change.to, pointLoads: loads } });
        const weightless = pointLoads.map((load) => ({ ...load, weightN: 0 }));
        expect(withLoads(weightless) / withLoads([])).toBeCloseTo(1, 12);
        const halves = pointLoads.map((load) => ({ ...load, weightN: load.weightN / 2 }));
        expect(withLoads([...halves, ...halves]) / withLoads(pointLoads)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("every load more pulls the strand harder, warmth slackens it", () => {
    fc.assert(
      fc.property(hung, part, between(1, 1000), (change, along, weightN) => {
        const pointLoads = [...(change.to.pointLoads ?? []), { atM: along * change.spanM, weightN }];
        const heavier = settledN({ ...change, to: { ...change.to, pointLoads } });
        expect(heavier).toBeGreaterThanOrEqual(settledN(change) * (1 - 1e-12));
        const warmer = { ...change.to, temperatureDegC: change.to.temperatureDegC + 5 };
        expect(settledN({ ...change, to: warmer })).toBeLessThan(settledN(change));
      }),
    );
  });

  it("hung and taken down again it is as it was strung", () => {
    fc.assert(
      fc.property(hung, (change) => {
        const back = settledN({ ...change, from: { ...change.to, horizontalN: settledN(change) }, to: change.from });
        expect(Math.abs(back / change.from.horizontalN - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("hangs with its whole weight on its two supports", () => {
    fc.assert(
      fc.property(hung, (change) => {
        const span = settle(change);
        const { nearDownN, farDownN } = supportPulls(span);
        const strandN = span.weightNPerM * Math.hypot(span.spanM, span.riseM);
        const loadsN = span.pointLoads.reduce((sum, { weightN }) => sum + weightN, 0);
        expect(nearDownN + farDownN).toBeCloseTo(strandN + loadsN, 6);
      }),
    );
  });

  it("is nowhere lower than at its lowest place, and nowhere above its chord", () => {
    fc.assert(
      fc.property(hung, part, (change, along) => {
        const span = settle(change);
        const atM = along * span.spanM;
        expect(loadedHeightM(span, atM)).toBeGreaterThanOrEqual(lowestPlace(span).heightM - 1e-9);
        expect(loadedSagM(span, atM)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("comes nowhere nearer to another wire than told", () => {
    fc.assert(
      fc.property(hung, hung, part, (one, other, along) => {
        const upper = { ...settle(one), nearHeightM: 8 };
        const lower = {
          ...settle({ ...other, spanM: one.spanM, to: { ...other.to, pointLoads: [] } }),
          nearHeightM: 7,
        };
        const { leastM, atM } = leastSeparation(upper, lower);
        expect(separationAtM(upper, lower, along * one.spanM)).toBeGreaterThanOrEqual(leastM - 1e-9);
        expect(separationAtM(upper, lower, atM)).toBe(leastM);
      }),
    );
  });
});

describe("the elastic catenary", () => {
  const exactN = (change: ChangeOfState) => {
    const state = exactChangeOfState(change);
    if (!state.ok) throw new Error(state.fault.what);
    return state.value.horizontalN;
  };

  it("settles, and comes back to the tension it was strung to", () => {
    fc.assert(
      fc.property(hung, (change) => {
        const horizontalN = exactN(change);
        const back = exactN({ ...change, from: { ...change.to, horizontalN }, to: change.from });
        expect(Math.abs(back / change.from.horizontalN - 1)).toBeLessThan(1e-8);
      }),
    );
  });

  it("is met by the parabola within 0.7 % where the load is even, within 3 % with point loads up to the weight of the line", () => {
    fc.assert(
      fc.property(hung, (change) => {
        const even = { ...change, to: { ...change.to, pointLoads: [] } };
        expect(Math.abs(settledN(even) / exactN(even) - 1)).toBeLessThan(0.007);
        const loads = change.to.pointLoads ?? [];
        const lineN = change.to.weightNPerM * change.spanM;
        const loadsN = loads.reduce((sum, { weightN }) => sum + weightN, 0);
        const scale = lineN / Math.max(lineN, loadsN);
        const pointLoads = loads.map(({ atM, weightN }) => ({ atM, weightN: weightN * scale }));
        const light = { ...change, to: { ...change.to, pointLoads } };
        expect(Math.abs(settledN(light) / exactN(light) - 1)).toBeLessThan(0.03);
      }),
    );
  });

  it("hangs below its chord everywhere, and pulls its supports with no less than its level tension", () => {
    fc.assert(
      fc.property(hung, part, (change, along) => {
        const span = settle(change);
        const exact = loadedCatenary(span);
        if (!exact.ok) throw new Error(exact.fault.what);
        expect(exact.value.sagM(along * span.spanM)).toBeGreaterThanOrEqual(-1e-9);
        expect(exact.value.lengthM).toBeGreaterThan(Math.hypot(span.spanM, span.riseM));
        expect(Math.min(exact.value.nearTensionN, exact.value.farTensionN)).toBeGreaterThanOrEqual(span.horizontalN);
      }),
    );
  });
});

describe("a row of spans that slips at its poles", () => {
  it("is ruled by a span between its mean and its longest, whatever their order", () => {
    fc.assert(
      fc.property(fc.array(between(5, 150), { minLength: 1, maxLength: 12 }), (spansM) => {
        const rulingM = rulingSpanM(spansM);
        const meanM = spansM.reduce((sum, one) => sum + one, 0) / spansM.length;
        expect(rulingM).toBeGreaterThanOrEqual(meanM * (1 - 1e-12));
        expect(rulingM).toBeLessThanOrEqual(Math.max(...spansM) * (1 + 1e-12));
        expect(rulingSpanM([...spansM].reverse())).toBeCloseTo(rulingM, 9);
      }),
    );
  });
});
