import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("a finding worked out from figures nobody has read in their document", () => {
  it("says so of the loading district and the strand", () => {
    let route = changed(smallRoute(), "loadingDistrict", "district-heavy", { basisMark: "memory" });
    route = changed(route, "strandType", "strand-quarter", { basisMark: "memory", breakingN: 9000 });
    expect(findingsOf(route, "strand-tension")[0]?.message).toBe(
      "In span P1 to P2 the strand is pulled too hard under the load of Heavy, worked out from unverified figures of Heavy and Quarter inch.",
    );
    expect(
      findingsOf(changed(route, "crossing", "crossing-1", { surfaceM: 100.8 }), "crossing-clearance")[0]?.message,
    ).toBe(
      "Over Test Rd in span P2 to P3 the line is too low under ice, worked out from unverified figures of Heavy and Quarter inch.",
    );
    const slack = changed(faultyRoute("pull-difference"), "strandType", "strand-quarter", { basisMark: "memory" });
    expect(findingsOf(slack, "pull-difference")[0]?.message).toBe(
      "At pole P2 slack span P1 to P2 hangs beside tight span P2 to P3 at the stringing temperature, worked out from unverified figures of Quarter inch.",
    );
  });

  it("does not say so where only the stringing temperature binds", () => {
    let route = changed(smallRoute(), "loadingDistrict", "district-heavy", { basisMark: "memory" });
    route = changed(route, "clearanceLimit", "limit-road", { condition: "stringing", limitM: 6 });
    expect(findingsOf(route, "crossing-clearance")[0]?.message).toBe(
      "Over Test Rd in span P2 to P3 the line is too low at the stringing temperature.",
    );
  });
});
