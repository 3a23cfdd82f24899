import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("guy-overloaded", () => {
  it("a guy set too steep is found", () => {
    expect(findingsOf(faultyRoute("guy-overloaded"), "guy-overloaded")).toMatchObject([
      {
        message: "At pole P1 the guy is pulled too hard under the load of Heavy.",
        limit: 0.55 * 29580,
        measured: expect.closeTo((5803.2 * (6.3 / 6.2) * Math.hypot(6.2, 1.5)) / 1.5, -1),
      },
    ]);
  });

  it("an anchor weaker than its guy is found", () => {
    expect(findingsOf(changed(smallRoute(), "guy", "guy-1", { anchorN: 10000 }), "guy-overloaded")).toMatchObject([
      { message: "At pole P1 the anchor of the guy is pulled too hard under the load of Heavy.", limit: 5500 },
    ]);
  });

  it("a guy as far out as it is high is quiet", () => {
    expect(findingsOf(smallRoute(), "guy-overloaded")).toEqual([]);
  });
});
