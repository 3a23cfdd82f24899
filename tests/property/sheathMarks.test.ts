import fc from "fast-check";
import { expect, test } from "vitest";
import { countSheath, type MarkRead } from "../../core/closeout/sheathMarks.ts";

const rule = { unitM: 0.3048, toleranceFrac: 0.01, toleranceM: 1 };

const marks: fc.Arbitrary<readonly MarkRead[]> = fc
  .array(fc.record({ stepM: fc.integer({ min: 10, max: 80 }), offFt: fc.constantFrom(0, 0, 0, 0, 100, -90, 4000) }), {
    maxLength: 7,
  })
  .map((steps) => {
    let drawnM = 0;
    return steps.map(({ stepM, offFt }, index) => {
      drawnM += stepM;
      return { place: `P${index}`, drawnM, figure: 20_000 + Math.round(drawnM / 0.3048) + offFt };
    });
  });

test("no other choice of readings leaves fewer things wrong", () => {
  fc.assert(
    fc.property(marks, fc.boolean(), (read, isDown) => {
      const turned = isDown ? read.map((one) => ({ ...one, figure: 90_000 - one.figure })) : read;
      const { sections, doubted } = countSheath(turned, rule);
      const wrong = doubted.length + sections.filter((one) => !one.isAsDrawn).length;
      for (const kept of choices(turned).filter((one) => one.length > 0))
        expect(wrong).toBeLessThanOrEqual(wrongIn(kept, turned.length));
    }),
    { numRuns: 200, seed: 41 },
  );
});

test("what is believed is used up in order, and every reading is either believed or doubted", () => {
  fc.assert(
    fc.property(marks, (read) => {
      const { sections, doubted } = countSheath(read, rule);
      expect(sections.every((one) => one.usedM >= 0)).toBe(true);
      const believed = read.length === 0 ? 0 : Math.max(1, sections.length + 1);
      expect(believed + doubted.length).toBe(read.length);
    }),
    { numRuns: 200, seed: 42 },
  );
});

function wrongIn(kept: readonly MarkRead[], count: number): number {
  return Math.min(
    ...[1, -1].map((sign) => {
      let wrong = count - kept.length;
      kept.slice(1).forEach((to, index) => {
        const from = kept[index] ?? to;
        const usedM = sign * (to.figure - from.figure) * rule.unitM;
        const drawnM = to.drawnM - from.drawnM;
        if (usedM < 0) wrong = Number.POSITIVE_INFINITY;
        else if (Math.abs(usedM - drawnM) > rule.toleranceFrac * drawnM + rule.toleranceM) wrong += 1;
      });
      return wrong;
    }),
  );
}

/** Every choice of readings, in order. */
function choices([first, ...rest]: readonly MarkRead[]): readonly (readonly MarkRead[])[] {
  if (first === undefined) return [[]];
  return choices(rest).flatMap((kept) => [kept, [first, ...kept]]);
}
