import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("pole-tag-repeated", () => {
  it("a tag on two poles is found", () => {
    expect(findingsOf(faultyRoute("pole-tag-repeated"), "pole-tag-repeated")).toMatchObject([
      {
        message: "More than one pole has the tag P2.",
        subjects: [
          { table: "pole", id: "pole-2" },
          { table: "pole", id: "pole-3" },
        ],
      },
    ]);
  });

  it("tags that differ by a letter are quiet", () => {
    expect(findingsOf(changed(smallRoute(), "pole", "pole-3", { tag: "P2A" }), "pole-tag-repeated")).toEqual([]);
  });
});
