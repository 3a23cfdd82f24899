import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

const rule = "extreme-load-missing";

describe(rule, () => {
  it("a pole over the height where extreme weather is asked for, in a route without it, is found", () => {
    expect(findingsOf(faultyRoute(rule), rule)).toMatchObject([
      {
        message:
          "Pole P2 stands so high that extreme wind and extreme ice with wind must be checked, and the settings name none.",
        measured: 19,
        limit: 18.288,
      },
    ]);
  });

  it("a pole so high in a route that names both is quiet", () => {
    expect(findingsOf(changed(extremeRoute(), "pole", "pole-2", { aboveGroundM: 19 }), rule)).toEqual([]);
  });

  it("a pole of just that height is quiet", () => {
    const none = extremeRoute({ extremeWindId: null, extremeIceId: null });
    expect(findingsOf(changed(none, "pole", "pole-2", { aboveGroundM: 18.288 }), rule)).toEqual([]);
  });

  it("a strength set of another document, which asks for nothing of the kind, is quiet", () => {
    const other = changed(faultyRoute(rule), "strengthSet", "strength-test", { basisDocument: "another" });
    expect(findingsOf(other, rule)).toEqual([]);
  });
});
