import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-past-span", () => {
  it("a terminal that reaches past the far pole is found", () => {
    expect(findingsOf(faultyRoute("terminal-past-span"), "terminal-past-span")).toMatchObject([
      {
        message: "Terminal T1 reaches past the end of span P2 to P3.",
        measured: expect.closeTo(45.2143, 6),
        limit: 45,
      },
    ]);
  });

  it("a terminal at the far end of its span is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "terminal", "terminal-1", { offsetM: 44.0856 }), "terminal-past-span"),
    ).toEqual([]);
  });
});
