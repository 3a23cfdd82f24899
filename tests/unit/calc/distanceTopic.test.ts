import { expect, it } from "vitest";
import { distanceTopic } from "../../../core/calc/distanceTopic.ts";

it("longitude comes first in both places", () => {
  expect(distanceTopic.run({ from: [0, 0], to: [1, 0] })).toEqual({
    ok: true,
    value: { distanceM: expect.closeTo(111319.4908, 4) },
  });
  expect(distanceTopic.run({ from: [0, 0], to: [0, 1] })).toEqual({
    ok: true,
    value: { distanceM: expect.closeTo(110574.3886, 4) },
  });
});
