import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("drops-cross", () => {
  it("drops of two terminals that cross are found once", () => {
    expect(findingsOf(faultyRoute("drops-cross"), "drops-cross")).toMatchObject([
      { message: "The drops to 1 Test Rd and 3 Test Rd cross.", severity: "note" },
    ]);
  });

  it("drops that fan out side by side are quiet", () => {
    expect(findingsOf(smallRoute(), "drops-cross")).toEqual([]);
  });
});
