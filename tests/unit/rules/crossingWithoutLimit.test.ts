import { describe, expect, it } from "vitest";
import { smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("crossing-without-limit", () => {
  it("a crossing the set has no limit for is found", () => {
    expect(findingsOf(faultyRoute("crossing-without-limit"), "crossing-without-limit")).toMatchObject([
      {
        message: "The clearance set Test clearances has no limit over a road: Test Rd in span P2 to P3 is not checked.",
      },
    ]);
  });

  it("on a dry route a set without a limit over water is quiet", () => {
    expect(findingsOf(without(smallRoute(), "clearanceLimit", "limit-water"), "crossing-without-limit")).toEqual([]);
  });
});
