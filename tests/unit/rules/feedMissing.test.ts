import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("feed-missing", () => {
  it("a fiber in use that no hub output lights is found", () => {
    expect(findingsOf(faultyRoute("feed-missing"), "feed-missing")).toMatchObject([
      { message: "No hub output lights fiber 1 of cable C1." },
    ]);
  });

  it("a dead fiber without a hub output is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "fiberUse", "use-1", { purpose: "dead", feedId: null }), "feed-missing"),
    ).toEqual([]);
  });
});
