import { describe, expect, it } from "vitest";
import { smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("clearance-set-incomplete", () => {
  it("a clearance set without a separation is found", () => {
    expect(findingsOf(faultyRoute("clearance-set-incomplete"), "clearance-set-incomplete")).toMatchObject([
      {
        message: "The clearance set Test clearances has no limit against neutral in the span: those are not checked.",
      },
    ]);
  });

  it("a set without a road limit is quiet", () => {
    expect(findingsOf(without(smallRoute(), "clearanceLimit", "limit-road"), "clearance-set-incomplete")).toEqual([]);
  });
});
