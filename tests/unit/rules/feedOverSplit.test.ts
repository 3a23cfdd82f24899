import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("feed-over-split", () => {
  it("a hub output on five fibers behind a splitter of four legs is found", () => {
    expect(findingsOf(faultyRoute("feed-over-split"), "feed-over-split")).toMatchObject([
      { message: "Hub port 1 lights more fibers than its hub splitter has legs.", measured: 5, limit: 4 },
    ]);
  });

  it("the same with a hub splitter of eight legs is quiet", () => {
    expect(
      findingsOf(changed(faultyRoute("feed-over-split"), "feed", "feed-1", { hubSplitCount: 8 }), "feed-over-split"),
    ).toEqual([]);
  });
});
