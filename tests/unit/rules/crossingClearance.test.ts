import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("crossing-clearance", () => {
  it("a road 13 ft under the iced line is found and the case named", () => {
    expect(findingsOf(faultyRoute("crossing-clearance"), "crossing-clearance")).toMatchObject([
      {
        message: "Over Test Rd in span P2 to P3 the line is too low in every case, most under ice.",
        measured: expect.closeTo(3.996, 3),
        limit: 4.7244,
        basis: { document: "test" },
      },
    ]);
  });

  it("the same height over a path for walkers is quiet", () => {
    expect(
      findingsOf(
        changed(changed(smallRoute(), "crossing", "crossing-1", { surfaceM: 101.5 }), "crossing", "crossing-1", {
          surface: "pedestrian",
        }),
        "crossing-clearance",
      ),
    ).toEqual([]);
  });

  it("a crossing whose ground nobody measured is quiet", () => {
    expect(
      findingsOf(
        changed(changed(smallRoute(), "pole", "pole-2", { groundM: null }), "crossing", "crossing-1", {
          surfaceM: 101.5,
        }),
        "crossing-clearance",
      ),
    ).toEqual([]);
  });
});
