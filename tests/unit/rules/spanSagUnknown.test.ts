import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("span-sag-unknown", () => {
  it("a strand section without a stringing sag is found in every span", () => {
    expect(findingsOf(faultyRoute("span-sag-unknown"), "span-sag-unknown")).toMatchObject([
      {
        message:
          "In span P1 to P2 neither tension nor clearance nor separation is checked. Strand section Section 1 has no stringing sag.",
      },
      {},
      {},
    ]);
  });

  it("a span without strand is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "span", "span-1", { strandSectionId: null }), "span-sag-unknown")).toEqual(
      [],
    );
  });
});
