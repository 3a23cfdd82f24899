import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("reach-over-class", () => {
  it("a living unit at the end of more fiber than its class reaches is found", () => {
    const [finding] = findingsOf(faultyRoute("reach-over-class"), "reach-over-class");
    expect(finding).toMatchObject({
      message: "1 Test Rd, port 1 of terminal T1, lies at the end of more fiber than G-PON B+ reaches.",
      limit: 20000,
      unit: "m",
    });
    expect(finding?.measured).toBeGreaterThan(20000);
  });

  it("a unit within reach is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "feed", "feed-1", { upstreamM: 15000 }), "reach-over-class")).toEqual([]);
  });
});
