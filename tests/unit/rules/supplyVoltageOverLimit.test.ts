import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("supply-voltage-over-limit", () => {
  it("a primary of 14.4 kV to ground is found", () => {
    expect(findingsOf(faultyRoute("supply-voltage-over-limit"), "supply-voltage-over-limit")).toMatchObject([
      {
        message:
          "The primary at pole P2 has a higher voltage than the supply limits are for: it needs more than they say.",
        measured: 14400,
      },
    ]);
  });

  it("a primary of 7.2 kV to ground is quiet", () => {
    expect(findingsOf(smallRoute(), "supply-voltage-over-limit")).toEqual([]);
  });
});
