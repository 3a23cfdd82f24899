import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("ground-missing", () => {
  it("ground nobody measured at a pole is found in both of its spans", () => {
    expect(findingsOf(faultyRoute("ground-missing"), "ground-missing").map((one) => one.message)).toEqual([
      "In span P1 to P2 no clearance over the ground is checked. Nobody measured the ground at pole P2.",
      "In span P2 to P3 no clearance over the ground is checked. Nobody measured the ground at pole P2.",
    ]);
  });

  it("a span without strand is quiet", () => {
    expect(
      findingsOf(
        changed(changed(faultyRoute("ground-missing"), "span", "span-1", { strandSectionId: null }), "span", "span-2", {
          strandSectionId: null,
        }),
        "ground-missing",
      ),
    ).toEqual([]);
  });
});
