import fc from "fast-check";
import { expect, it } from "vitest";
import { graphOf } from "../../../../core/placement/general/graph.ts";
import { arcFinder } from "../../../../core/placement/general/ground.ts";
import { makeIncumbent } from "../../../../core/placement/general/incumbent.ts";
import { costOf, layoutOf } from "../../../../core/placement/general/layout.ts";
import { seededDraws } from "../../../../core/placement/general/random.ts";
import { searchGeneral } from "../../../../core/placement/general/searchGeneral.ts";
import { makeShaking } from "../../../../core/placement/general/shaking.ts";
import { problemOf } from "../../../fixtures/placement/problemOf.ts";

const patient = { elapsedS: () => 0, stopped: () => false };
const place = fc.record({ x: fc.integer({ min: 0, max: 100 }), demand: fc.integer({ min: 1, max: 5 }) });

it("from a layout at the first three places shaking comes to the cheapest, with no more places and none overloaded", () => {
  let moved = 0;
  fc.assert(
    fc.property(fc.array(place, { minLength: 6, maxLength: 9 }), (places) => {
      const sum = places.reduce((total, { demand }) => total + demand, 0);
      const modules = [{ capacity: Math.ceil(sum / 3) + 4, cost: 0 }];
      const problem = {
        ...problemOf(
          places.map(() => ({ modules })),
          places.map(({ x, demand }) => ({
            demand,
            arcs: places.map((other, point) => ({ point, cost: Math.abs(other.x - x) })),
          })),
        ),
        openExactly: 3,
      };
      const graph = graphOf(problem);
      const incumbent = makeIncumbent(graph, patient, 0);
      const start = Int32Array.from(places, (_, unit) => unit * places.length + (unit % 3));
      incumbent.offer({ arcOf: start, cost: costOf(graph, layoutOf(graph, start)) });
      const tools = { graph, arcAt: arcFinder(graph), draw: seededDraws(1), stopped: () => false };
      if (incumbent.arcOf() === null) return;
      const before = incumbent.cost();
      const shaking = makeShaking(graph, { ...tools, effort: { moves: 0 } }, incumbent);
      for (let shake = 0; shake < 80; shake += 1) shaking.step();
      const { pointOf = new Int32Array(), cost = Number.NaN } = incumbent.placement() ?? {};
      if (cost < before) moved += 1;
      expect(cost).toBe(searchGeneral(problem, patient, { seed: 1, gap: 0 })?.cost);
      expect(new Set(pointOf).size).toBeLessThanOrEqual(3);
      for (const point of new Set(pointOf)) {
        const load = places.reduce((total, { demand }, unit) => total + (pointOf[unit] === point ? demand : 0), 0);
        expect(load).toBeLessThanOrEqual(modules[0]?.capacity ?? 0);
      }
    }),
    { numRuns: 15, seed: 2 },
  );
  expect(moved).toBeGreaterThan(8);
});
