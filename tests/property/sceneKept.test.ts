import fc from "fast-check";
import { expect, test } from "vitest";
import { applyChange } from "../../core/edits/change.ts";
import { findCommand } from "../../core/edits/register.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { openSceneMaker, type Scene } from "../../renderer/canvas/scene.ts";
import type { Box } from "../../renderer/canvas/viewport.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";

const pick = fc.nat({ max: 1_000 });
const metres = fc.integer({ min: -40, max: 40 });

/** Edits by hand as a designer strings them together: commands of the register with rows picked from the route as it is. */
const edit = fc.oneof(
  fc.record({ what: fc.constant("pole.move" as const), row: pick, eastM: metres, northM: metres }),
  fc.record({
    what: fc.constant("terminal.move" as const),
    row: pick,
    span: pick,
    part: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
  }),
  fc.record({ what: fc.constant("terminal.remove" as const), row: pick }),
  fc.record({ what: fc.constant("drop.remove" as const), row: pick }),
  fc.record({ what: fc.constant("pole.rename" as const), row: pick, tag: fc.constantFrom("X-1", "X-2", "X-3") }),
);
type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

function inputOf(route: ReturnType<typeof smallRoute>, one: Edit): unknown {
  const nth = <Row>(rows: ReadonlyMap<string, Row>, n: number) => [...rows.values()][n % Math.max(1, rows.size)];
  switch (one.what) {
    case "pole.move": {
      const pole = nth(route.pole, one.row);
      return pole && { poleId: pole.id, eastM: pole.eastM + one.eastM, northM: pole.northM + one.northM };
    }
    case "pole.rename":
      return { poleId: nth(route.pole, one.row)?.id, tag: one.tag };
    case "terminal.move": {
      const span = nth(route.span, one.span);
      return (
        span && { terminalId: nth(route.terminal, one.row)?.id, spanId: span.id, offsetM: span.lengthM * one.part }
      );
    }
    case "terminal.remove":
      return { terminalId: nth(route.terminal, one.row)?.id };
    case "drop.remove":
      return { dropId: nth(route.drop, one.row)?.id };
  }
}

/** Everything a scene draws, without the functions it is found by. */
const drawnOf = ({ poles, spans, terminals, coils, closures, houses, drops }: Scene) => ({
  poles: { ...poles, index: null },
  spans: { ...spans, index: null },
  terminals: terminals.marks,
  coils: coils.marks,
  closures: closures.marks,
  houses: houses.marks,
  drops: drops.marks,
});

const foundIn = ({ poles, spans, terminals, coils, houses, drops }: Scene, box: Box) =>
  [poles, spans, terminals, coils, houses, drops].map(({ index }) => [...index.within(box)]);

const box: fc.Arbitrary<Box> = fc
  .tuple(
    fc.integer({ min: -100, max: 400 }),
    fc.integer({ min: -100, max: 100 }),
    fc.nat({ max: 200 }),
    fc.nat({ max: 200 }),
  )
  .map(([westM, southM, wideM, highM]) => ({ westM, southM, eastM: westM + wideM, northM: southM + highM }));

let editCount = 0;

test("a scene kept over any edits is the scene made anew of the route as it is, and finds the same things at every place", () => {
  fc.assert(
    fc.property(
      fc.array(edit, { minLength: 1, maxLength: 8 }),
      fc.array(box, { minLength: 4, maxLength: 8 }),
      (edits, boxes) => {
        const plant = openPlant(smallRoute());
        const makeScene = openSceneMaker(plant);
        makeScene(plant.route());
        for (const one of edits) {
          const asked = findCommand(one.what)?.ask(plant.route(), inputOf(plant.route(), one));
          if (!asked?.ok) continue;
          const { rows } = asked.value;
          const next = applyChange(plant.route(), { rows });
          if (!next.ok) throw new Error(next.fault.what);
          plant.advance(next.value, rows);
          editCount += 1;
          const kept = makeScene(plant.route());
          const anew = openSceneMaker(openPlant(plant.route()))(plant.route());
          expect(drawnOf(kept)).toEqual(drawnOf(anew));
          for (const here of boxes) expect(foundIn(kept, here)).toEqual(foundIn(anew, here));
        }
      },
    ),
    { numRuns: 150 },
  );
  expect(editCount).toBeGreaterThan(100);
});
