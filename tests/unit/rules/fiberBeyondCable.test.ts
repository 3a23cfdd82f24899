import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("fiber-beyond-cable", () => {
  it("fiber 49 of a cable of 48 is found", () => {
    expect(findingsOf(faultyRoute("fiber-beyond-cable"), "fiber-beyond-cable")).toMatchObject([
      { message: "Fiber 49 is used of cable C1, which has fewer.", measured: 49, limit: 48 },
    ]);
  });

  it("the last fiber of the cable is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "fiberUse", "use-1", { fiber: 48 }), "fiber-beyond-cable")).toEqual([]);
  });
});
