import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("usable-space-unknown", () => {
  it("a pole of unknown height is found", () => {
    expect(findingsOf(faultyRoute("usable-space-unknown"), "usable-space-unknown")).toMatchObject([
      {
        message:
          "How high pole P2 stands is unknown: whether there is room for our strand below its top is not checked.",
      },
    ]);
  });

  it("a pole of unknown height without our strand is quiet", () => {
    expect(
      findingsOf(
        ["span-1", "span-2"].reduce(
          (route, id) => changed(route, "span", id, { strandSectionId: null }),
          faultyRoute("usable-space-unknown"),
        ),
        "usable-space-unknown",
      ),
    ).toEqual([]);
  });
});
