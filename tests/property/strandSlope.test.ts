import fc from "fast-check";
import { expect, it } from "vitest";
import { changeOfState } from "../../core/strand/changeOfState.ts";
import { loadedSagM } from "../../core/strand/loadedSpan.ts";
import { rulingSpanM } from "../../core/strand/rulingSpan.ts";
import { rowStringingN, slippingSpans } from "../../core/strand/slippingSpans.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const axialStiffnessN = 3.76e6;
const expansionPerDegC = 1.15e-5;

/** Midspan sag of a span strung to a sag on a slope, m. */
function sagM(spanM: number, riseM: number, { weightNPerM, sagFrac, toNPerM, warmerDegC }: Strung): number {
  const horizontalN = rowStringingN([{ spanM, riseM, from: { weightNPerM } }], sagFrac);
  const state = changeOfState({
    spanM,
    riseM,
    axialStiffnessN,
    expansionPerDegC,
    from: { weightNPerM, temperatureDegC: 0, horizontalN },
    to: { weightNPerM: toNPerM, temperatureDegC: warmerDegC },
  });
  if (!state.ok) throw new Error(state.fault.what);
  return loadedSagM({ spanM, riseM, weightNPerM: toNPerM, horizontalN: state.value.horizontalN }, spanM / 2);
}

type Strung = {
  readonly weightNPerM: number;
  readonly sagFrac: number;
  readonly toNPerM: number;
  readonly warmerDegC: number;
};

const strung: fc.Arbitrary<Strung> = fc.record({
  weightNPerM: between(1.5, 6),
  sagFrac: between(0.008, 0.015),
  toNPerM: between(6, 20),
  warmerDegC: between(-35, 35),
});

it.each([
  [0.6, 0.1, 0.003],
  [1.5, 0.2, 0.016],
])(
  "attachments that differ by up to %d m on a slope of up to %d move the sag by less than %d m",
  (mostM, steepest, limitM) => {
    const slope = between(-steepest, steepest);
    fc.assert(
      fc.property(strung, between(20, 80), slope, between(-mostM, mostM), (one, spanM, slopeFrac, differM) => {
        const byGroundM = sagM(spanM, slopeFrac * spanM, one);
        const byAttachmentsM = sagM(spanM, slopeFrac * spanM + differM, one);
        expect(Math.abs(byGroundM - byAttachmentsM)).toBeLessThan(limitM);
      }),
      { numRuns: 1000 },
    );
  },
);

it("level spans under one load change as their ruling span does, wherever the strand slips", () => {
  fc.assert(
    fc.property(strung, fc.array(between(15, 90), { minLength: 1, maxLength: 12 }), (one, spansM) => {
      const { weightNPerM, sagFrac, toNPerM, warmerDegC } = one;
      const spans = spansM.map((spanM) => ({
        spanM,
        riseM: 0,
        from: { weightNPerM },
        to: { weightNPerM: toNPerM },
      }));
      const horizontalN = rowStringingN(spans, sagFrac);
      const row = slippingSpans({
        spans,
        axialStiffnessN,
        expansionPerDegC,
        horizontalN,
        fromDegC: 0,
        toDegC: warmerDegC,
      });
      const ruling = changeOfState({
        spanM: rulingSpanM(spansM),
        axialStiffnessN,
        expansionPerDegC,
        from: { weightNPerM, temperatureDegC: 0, horizontalN },
        to: { weightNPerM: toNPerM, temperatureDegC: warmerDegC },
      });
      if (!row.ok || !ruling.ok) throw new Error("a tension did not settle");
      expect(row.value.horizontalN / ruling.value.horizontalN).toBeCloseTo(1, 9);
    }),
    { numRuns: 300 },
  );
});
