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
