import { expect, it } from "vitest";
import { tensionChangeTopic } from "../../../core/calc/tensionChangeTopic.ts";

const strand = { spanM: 45.72, areaM2: 2.27e-5, modulusPa: 1.655e11, expansionPerC: 1.152e-5 };
const strung = { weightNPerM: 2.948, horizontalN: 1684.8, temperatureC: 15.6 };
const plain = { weightNPerM: 2.948, temperatureC: 15.6 };
const load = [{ atM: 0.9144, weightN: 66.7 }];

it("nothing changed leaves tension and sag as they were", () => {
  expect(tensionChangeTopic.run({ ...strand, from: strung, to: plain })).toEqual({
    ok: true,
    value: {
      horizontalN: expect.closeTo(1684.8, 6),
      sagM: expect.closeTo((2.948 * 45.72 ** 2) / (8 * 1684.8), 9),
      supportTensionN: expect.closeTo(Math.hypot(1684.8, (2.948 * 45.72) / 2), 6),
    },
  });
});

it("a terminal hung near the pole pulls harder, and lifts the middle of the span", () => {
  expect(tensionChangeTopic.run({ ...strand, from: strung, to: { ...plain, pointLoads: load } })).toMatchObject({
    ok: true,
    value: { horizontalN: expect.closeTo(1760, -1), sagM: expect.closeTo(0.4549, 3) },
  });
});

it("a terminal that hung there before changes nothing", () => {
  const hung = { ...strand, from: { ...strung, pointLoads: load }, to: { ...plain, pointLoads: load } };
  expect(tensionChangeTopic.run(hung)).toMatchObject({ ok: true, value: { horizontalN: expect.closeTo(1684.8, 6) } });
});

it("tension is told as part of the breaking strength where that is known", () => {
  expect(tensionChangeTopic.run({ ...strand, from: strung, to: plain, breakingN: 16861.5 })).toMatchObject({
    value: { breakingFrac: expect.closeTo(0.1, 4) },
  });
});

it("a load past the far pole is refused, and a tension that does not settle is said so", () => {
  const far = { ...plain, pointLoads: [{ atM: 50, weightN: 1 }] };
  expect(tensionChangeTopic.run({ ...strand, from: strung, to: far })).toMatchObject({
    fault: { code: "out-of-range", what: "a point load must lie in the span of 45.72 m, not at 50." },
  });
  expect(tensionChangeTopic.run({ ...strand, spanM: 1e200, from: strung, to: plain })).toMatchObject({
    ok: false,
    fault: { code: "not-settled", where: "tension-change" },
  });
});

it("by the catenary the same terminal pulls a little less and midspan hangs a little lower", () => {
  const asked = { ...strand, from: strung, to: { ...plain, pointLoads: load } };
  const parabola = tensionChangeTopic.run({ ...asked, method: "parabola" });
  const catenary = tensionChangeTopic.run({ ...asked, method: "catenary" });
  expect(tensionChangeTopic.run(asked)).toEqual(parabola);
  const [rough, exact] = [Object(parabola).value, Object(catenary).value];
  expect(exact.horizontalN / rough.horizontalN).toBeCloseTo(1, 3);
  expect(exact.horizontalN).toBeLessThan(rough.horizontalN);
  expect(exact.sagM).toBeGreaterThan(rough.sagM);
  expect(exact.supportTensionN).toBeGreaterThan(exact.horizontalN);
});
