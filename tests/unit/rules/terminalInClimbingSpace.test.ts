import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-in-climbing-space", () => {
  it("a terminal whose near end is 27 in from the pole is found", () => {
    expect(findingsOf(faultyRoute("terminal-in-climbing-space"), "terminal-in-climbing-space")).toMatchObject([
      {
        message: "Terminal T1 reaches into the climbing space of pole P2.",
        measured: expect.closeTo(0.6857, 6),
        limit: 0.762,
      },
    ]);
  });

  it("a terminal 36 in from the pole is quiet", () => {
    expect(findingsOf(smallRoute(), "terminal-in-climbing-space")).toEqual([]);
  });

  it("a terminal whose near end touches the climbing space is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "terminal", "terminal-1", { offsetM: 0.8763 }), "terminal-in-climbing-space"),
    ).toEqual([]);
  });
});

describe("the climbing space of a company that keeps less than the clearance set", () => {
  const lax = (offsetM: number, northM = 0) => {
    const route = changed(smallRoute({ settings: { climbingSpaceM: 0.3 } }), "terminal", "terminal-1", { offsetM });
    return findingsOf(changed(route, "pole", "pole-3", { northM }), "terminal-in-climbing-space");
  };

  it("is the set's 30 in, with the set as its source, and 27.5 in at a line angle", () => {
    expect(lax(0.762 + 0.11)).toMatchObject([{ limit: 0.762, basis: { document: "test" } }]);
    expect(lax(0.762 + 0.11, 40)).toEqual([]);
    expect(lax(0.6985 + 0.11, 40)).toMatchObject([{ limit: 0.6985 }]);
  });
});
