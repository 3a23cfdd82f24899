import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("strand-tension", () => {
  it("strand pulled over its part of the breaking strength is found in every span", () => {
    expect(findingsOf(faultyRoute("strand-tension"), "strand-tension")).toMatchObject([
      {
        message:
          "In span P1 to P2 the strand is pulled too hard under the load of Heavy and at the stringing temperature.",
        measured: expect.closeTo(5820.84, 2),
        limit: 3600,
      },
      {},
      {},
    ]);
  });

  it("strand that just holds the district load is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "strandType", "strand-quarter", { breakingN: 5837 / 0.6 }), "strand-tension"),
    ).toEqual([]);
  });
});
