import { describe, expect, it } from "vitest";
import { changed, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("ground-clearance", () => {
  it("a hump that nobody crosses is found", () => {
    expect(findingsOf(faultyRoute("ground-clearance"), "ground-clearance")).toMatchObject([
      {
        message: "Over the ground in span P1 to P2 the line is too low in every case, most under ice.",
        limit: 2.8956,
      },
    ]);
  });

  it("a hump that a levelled crossing covers is quiet", () => {
    expect(
      findingsOf(
        withRows(faultyRoute("ground-clearance"), "crossing", [
          { id: "crossing-9", spanId: "span-1", name: "", surface: "road", offsetM: 22.5, widthM: 45, surfaceM: 100 },
        ]),
        "ground-clearance",
      ),
    ).toEqual([]);
  });

  it("a hump the line clears is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("ground-clearance"), "groundPoint", "ground-1", { groundM: 102 }),
        "ground-clearance",
      ),
    ).toEqual([]);
  });
});
