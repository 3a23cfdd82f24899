import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { withStructure } from "../../fixtures/route/oneMore.ts";

describe("structure-clearance", () => {
  it("a line just over a roof is found", () => {
    expect(findingsOf(faultyRoute("structure-clearance"), "structure-clearance")).toMatchObject([
      {
        message:
          "Over the barn in span P1 to P2 the line is too low in every case, most under ice, the surface taken as the line between the poles' ground.",
        limit: 0.9144,
      },
    ]);
  });

  it("a line beside a wall is found by its level distance", () => {
    expect(findingsOf(withStructure({ besideM: 1 }), "structure-clearance")).toMatchObject([
      {
        message: "Beside the barn in span P1 to P2 the line passes too near, and not high enough over it.",
        measured: 1,
        limit: 1.3716,
      },
    ]);
  });

  const under = (bottomM: number) => withStructure({ besideM: 0, heightM: 9, bottomM, kind: "litSign" });

  it("a line close under a lit sign is found by what lacks less, with the mend that lowers it", () => {
    expect(findingsOf(under(6.4), "structure-clearance")).toMatchObject([
      {
        message:
          "Under the barn in span P1 to P2 the line is too high at the stringing temperature, the surface taken as the line between the poles' ground.",
        limit: 0.6096,
        fixes: [{ command: "attachment.set" }, { command: "attachment.set" }],
      },
    ]);
    expect(findingsOf(withStructure({ besideM: 0, heightM: 5.2, bottomM: 4 }), "structure-clearance")).toMatchObject([
      { message: expect.stringMatching(/^Over the barn/) },
    ]);
  });

  it("a line under a sign high enough over it is quiet", () => {
    expect(findingsOf(under(8), "structure-clearance")).toEqual([]);
  });

  it("a line far enough beside a wall is quiet", () => {
    expect(findingsOf(withStructure({ besideM: 1.4 }), "structure-clearance")).toEqual([]);
  });

  it("a line high enough over a low roof is quiet", () => {
    expect(findingsOf(withStructure({ besideM: 0, heightM: 3 }), "structure-clearance")).toEqual([]);
  });
});
