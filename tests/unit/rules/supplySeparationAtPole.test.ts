import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("supply-separation-at-pole", () => {
  it("a neutral 28 in above our strand is found", () => {
    expect(findingsOf(faultyRoute("supply-separation-at-pole"), "supply-separation-at-pole")).toMatchObject([
      {
        message: "At pole P2 our strand is not far enough below the neutral of Power company.",
        measured: expect.closeTo(0.7, 6),
        limit: 0.762,
      },
    ]);
  });

  it("a neutral 30 in above our strand is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "attachment", "neutral-2", { heightM: 7.062 }), "supply-separation-at-pole"),
    ).toEqual([]);
  });

  it("a neutral on a pole without our strand is quiet", () => {
    expect(
      findingsOf(
        ["span-1", "span-2"].reduce(
          (route, id) => changed(route, "span", id, { strandSectionId: null }),
          faultyRoute("supply-separation-at-pole"),
        ),
        "supply-separation-at-pole",
      ),
    ).toEqual([]);
  });
});
