import { expect, it } from "vitest";
import { colourTopic } from "../../../core/calc/colourTopic.ts";

it("fiber 30 of tubes of 12 is white in the green tube", () => {
  expect(colourTopic.run({ fiber: 30, fibersPerTube: 12 })).toEqual({
    ok: true,
    value: { tube: 3, tubeColour: "green", fiberInTube: 6, fiberColour: "white" },
  });
});
