import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("crossing-clearance-unknown", () => {
  it("a crossing beside a pole without ground is found, never passed", () => {
    expect(findingsOf(faultyRoute("crossing-clearance-unknown"), "crossing-clearance-unknown")).toMatchObject([
      { message: "Over Test Rd in span P2 to P3 the clearance is unknown. Nobody measured the ground at pole P2." },
    ]);
  });

  it("a crossing whose surface is taken from the ground line is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "crossing", "crossing-1", { surfaceM: null }), "crossing-clearance-unknown"),
    ).toEqual([]);
  });
});
