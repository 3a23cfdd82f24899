import { describe, expect, it } from "vitest";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("span-unstrung", () => {
  it("a span the line does not reach is found", () => {
    expect(findingsOf(faultyRoute("span-unstrung"), "span-unstrung")).toMatchObject([
      { message: "Span P4 to P5 carries no strand: the line does not reach it.", severity: "note" },
    ]);
  });

  it("a span whose cable hangs on nothing is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "span", "span-1", { strandSectionId: null }), "span-unstrung")).toEqual([]);
  });

  it("a route nobody has strung is quiet", () => {
    const spans = ["span-1", "span-2", "span-3"];
    const bare = spans.reduce(
      (route, id) => changed(route, "span", id, { strandSectionId: null }),
      faultyRoute("span-unstrung"),
    );
    expect(findingsOf(without(bare, "strandSection", "section-1"), "span-unstrung")).toEqual([]);
  });
});
