import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { withStructure } from "../../fixtures/route/oneMore.ts";

describe("structure-without-limit", () => {
  it("a barn the clearance set has no limit over is found", () => {
    expect(findingsOf(faultyRoute("structure-without-limit"), "structure-without-limit")).toMatchObject([
      {
        message: "The clearance set Test clearances has no limit over the barn in span P1 to P2: that is not checked.",
      },
    ]);
  });

  it("a barn with both limits is quiet", () => {
    expect(findingsOf(withStructure({ besideM: 9 }), "structure-without-limit")).toEqual([]);
  });
});
