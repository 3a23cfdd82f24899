import { expect, it } from "vitest";
import { separationTopic } from "../../../core/calc/separationTopic.ts";

const lower = { nearHeightM: 7, farHeightM: 7, weightNPerM: 3, horizontalN: 1500 };

it("a slack wire over a taut strand comes nearest at midspan", () => {
  const upper = { nearHeightM: 8, farHeightM: 8, sagM: 0.9 };
  expect(separationTopic.run({ spanM: 40, upper, lower })).toEqual({
    ok: true,
    value: { leastM: expect.closeTo(0.5, 9), atM: 20, nearM: 1, midspanM: expect.closeTo(0.5, 9), farM: 1 },
  });
});

it("a wire known by its sag hangs at that sag on a slope too", () => {
  const upper = { nearHeightM: 8, farHeightM: 12, sagM: 0.9 };
  expect(separationTopic.run({ spanM: 40, upper, lower: { nearHeightM: 7, farHeightM: 11, sagM: 0.4 } })).toMatchObject(
    { value: { midspanM: expect.closeTo(0.5, 9) } },
  );
});

it.each([
  { nearHeightM: 8, farHeightM: 8 },
  { nearHeightM: 8, farHeightM: 8, weightNPerM: 3 },
  { nearHeightM: 8, farHeightM: 8, sagM: 0.9, weightNPerM: 3, horizontalN: 1500 },
])("a wire is known by its sag or by load and tension, and not by both", (upper) => {
  expect(separationTopic.run({ spanM: 40, upper, lower })).toMatchObject({
    fault: { what: "upper must have either sagM alone or weightNPerM and horizontalN." },
  });
});
