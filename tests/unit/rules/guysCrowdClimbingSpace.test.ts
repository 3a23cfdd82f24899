import { describe, expect, it } from "vitest";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("guys-crowd-climbing-space", () => {
  it("two guys 0.8 m apart on one pole are found", () => {
    expect(findingsOf(faultyRoute("guys-crowd-climbing-space"), "guys-crowd-climbing-space")).toMatchObject([
      {
        message:
          "On pole P1 2 guys are attached within the height of one level: at most one, or two as a pair, may stand in the climbing space.",
        measured: expect.closeTo(0.8, 6),
        limit: 0.4572,
      },
    ]);
  });

  it("three guys within one level are found, however near", () => {
    const guy = smallRoute().guy.get("guy-1");
    if (!guy) throw new Error("no guy");
    const route = withRows(smallRoute(), "guy", [
      { ...guy, id: "guy-b" },
      { ...guy, id: "guy-c" },
    ]);
    expect(findingsOf(route, "guys-crowd-climbing-space")).toMatchObject([{ measured: 0, limit: 1.2192 }]);
  });

  it("a pair 18 in apart, and two guys more than 4 ft apart, are quiet", () => {
    const route = faultyRoute("guys-crowd-climbing-space");
    for (const heightM of [6.3 - 0.4572, 5])
      expect(findingsOf(changed(route, "guy", "guy-low", { heightM }), "guys-crowd-climbing-space")).toEqual([]);
  });
});
