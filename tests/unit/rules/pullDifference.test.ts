import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("pull-difference", () => {
  it("a slack span is found", () => {
    expect(findingsOf(faultyRoute("pull-difference"), "pull-difference")).toMatchObject([
      {
        message: "At pole P2 slack span P1 to P2 hangs beside tight span P2 to P3 at the stringing temperature.",
        measured: expect.closeTo(517, 0),
        limit: expect.closeTo(295.8, 6),
      },
    ]);
  });

  it("a slack span whose strand slips at its poles is quiet", () => {
    const slipping = changed(faultyRoute("pull-difference"), "strandSection", "section-1", { atPoles: "slipping" });
    expect(findingsOf(slipping, "pull-difference")).toEqual([]);
  });

  it("a slack span the strand dead-ends before is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("pull-difference"), "span", "span-1", { strandSectionId: null }),
        "pull-difference",
      ),
    ).toEqual([]);
  });
});
