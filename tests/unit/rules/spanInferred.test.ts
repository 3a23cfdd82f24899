import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("span-inferred", () => {
  it("a span that was inferred is found", () => {
    expect(findingsOf(faultyRoute("span-inferred"), "span-inferred")).toMatchObject([
      { message: "Span P1 to P2 was inferred from where the poles stand and waits for a look.", severity: "note" },
    ]);
  });

  it("a span a person drew is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "span", "span-1", { origin: "drawn" }), "span-inferred")).toEqual([]);
  });
});
