import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("hanging-overlap", () => {
  it("a storage coil 3 in from a terminal's end is found", () => {
    expect(findingsOf(faultyRoute("hanging-overlap"), "hanging-overlap")).toMatchObject([
      {
        message: "In span P2 to P3 terminal T1 and a coil of cable C1 hang too close.",
        measured: expect.closeTo(0.0713, 6),
        limit: 0.3048,
      },
    ]);
  });

  it("a terminal with its own coil under it is quiet", () => {
    expect(findingsOf(smallRoute(), "hanging-overlap")).toEqual([]);
  });

  it("a storage coil a foot from the terminal's end is quiet", () => {
    expect(
      findingsOf(changed(faultyRoute("hanging-overlap"), "slack", "storage-1", { offsetM: 1.3335 }), "hanging-overlap"),
    ).toEqual([]);
  });
});
