import { describe, expect, it } from "vitest";
import { colourAt, fiberPlace } from "../../core/fiber/colourCode.ts";
import { type Source, sourceTitle } from "./source.ts";

const colourCode: Source = {
  document: "TIA-598, order of the colours: names seen in a public encyclopedia article, abbreviations from memory",
  edition: "C",
  mark: "seen",
  tolerance: "the exact words",
};

describe(sourceTitle(colourCode), () => {
  it("the twelve colours stand in their order", () => {
    const positions = Array.from({ length: 12 }, (_, index) => colourAt(index + 1));
    expect(positions.map(({ name }) => name).join(" ")).toBe(
      "blue orange green brown slate white red black yellow violet rose aqua",
    );
    expect(positions.map(({ abbreviation }) => abbreviation).join(" ")).toBe("BL OR GR BR SL WH RD BK YL VI RS AQ");
  });

  it("the second dozen carries a black tracer, but black a yellow one", () => {
    expect([13, 20, 24].map((position) => colourAt(position).name)).toEqual([
      "blue with black tracer",
      "black with yellow tracer",
      "aqua with black tracer",
    ]);
  });

  it("each further dozen adds a stripe", () => {
    expect([25, 32, 37].map((position) => colourAt(position).name)).toEqual([
      "blue with two black tracers",
      "black with two yellow tracers",
      "blue with three black tracers",
    ]);
  });
});

const numbering: Source = {
  document: "numbering of fibers in tubes of 12",
  edition: "tube = ceil(f / 12), position = (f - 1) mod 12 + 1",
  mark: "computed",
  tolerance: "exact",
};

describe(sourceTitle(numbering), () => {
  it.each([
    [1, 1, "blue", 1, "blue"],
    [12, 1, "blue", 12, "aqua"],
    [13, 2, "orange", 1, "blue"],
    [144, 12, "aqua", 12, "aqua"],
    [145, 13, "blue with black tracer", 1, "blue"],
    [288, 24, "aqua with black tracer", 12, "aqua"],
  ] as const)("fiber %s is in tube %s, %s, as number %s, %s", (fiber, tube, tubeColour, fiberInTube, fiberColour) => {
    expect(fiberPlace(fiber, 12)).toEqual({ tube, tubeColour, fiberInTube, fiberColour });
  });
});
