import { describe, expect, it } from "vitest";
import { smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("strength-set-incomplete", () => {
  it("a strength set without guys is found", () => {
    expect(findingsOf(faultyRoute("strength-set-incomplete"), "strength-set-incomplete")).toMatchObject([
      {
        message:
          "The strength set Test strengths has no limit for guys under the district's load: those are not checked.",
      },
    ]);
  });

  it("a strength set without a limit in extreme wind, for a route checked under it, is found", () => {
    const bare = without(extremeRoute(), "strengthLimit", "strength-strand-extremeWind");
    expect(findingsOf(bare, "strength-set-incomplete")[0]?.message).toContain("no limit for strand in extreme wind:");
  });

  it("a whole strength set is quiet", () => {
    for (const route of [smallRoute(), extremeRoute()])
      expect(findingsOf(route, "strength-set-incomplete")).toEqual([]);
  });
});
