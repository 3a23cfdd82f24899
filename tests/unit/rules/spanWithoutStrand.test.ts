import { describe, expect, it } from "vitest";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("span-without-strand", () => {
  it("a cable in a span without strand is found", () => {
    expect(findingsOf(faultyRoute("span-without-strand"), "span-without-strand")).toMatchObject([
      { message: "Span P1 to P2 has no strand for cable C1." },
    ]);
  });

  it("a span without strand that carries nothing is quiet", () => {
    expect(
      findingsOf(
        without(changed(smallRoute(), "span", "span-1", { strandSectionId: null }), "cableRun", "run-1"),
        "span-without-strand",
      ),
    ).toEqual([]);
  });
});
