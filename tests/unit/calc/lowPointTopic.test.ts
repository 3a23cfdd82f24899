import { expect, it } from "vitest";
import { lowPointTopic } from "../../../core/calc/lowPointTopic.ts";

const span = { spanM: 40, weightNPerM: 2, horizontalN: 800 };

it("a level span is lowest at midspan, its sag below both supports", () => {
  expect(lowPointTopic.run({ ...span, riseM: 0, method: "parabola" })).toEqual({
    ok: true,
    value: { lowPointM: 20, belowLowerM: 0.5 },
  });
});

it("a rise moves the low point towards the lower support, whichever that is", () => {
  const up = lowPointTopic.run({ ...span, riseM: 0.5, method: "parabola" });
  expect(up).toEqual({ ok: true, value: { lowPointM: 15, belowLowerM: 0.28125 } });
  expect(lowPointTopic.run({ ...span, riseM: -0.5, method: "parabola" })).toEqual(up);
  expect(lowPointTopic.run({ ...span, riseM: 0.5, method: "catenary" })).toMatchObject({
    value: { lowPointM: expect.closeTo(15, 1), belowLowerM: expect.closeTo(0.281, 3) },
  });
});
