import { expect, it } from "vitest";
import { sagTopic } from "../../../core/calc/sagTopic.ts";

const span = { spanM: 40, weightNPerM: 2, horizontalN: 800 };

it("a span without a rise is level", () => {
  const level = sagTopic.run({ ...span, method: "parabola" });
  expect(level).toEqual({ ok: true, value: { sagM: 0.5, lengthM: 40 + 2 / 120, lowPointM: 20, supportTensionN: 801 } });
  expect(sagTopic.run({ ...span, riseM: 0, method: "parabola" })).toEqual(level);
});

it("the catenary of the same span sags a little more", () => {
  expect(sagTopic.run({ ...span, method: "catenary" })).toMatchObject({
    ok: true,
    value: { sagM: expect.closeTo(0.500104, 6) },
  });
});
