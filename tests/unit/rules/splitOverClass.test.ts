import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("split-over-class", () => {
  it("light split to 128 where its class allows 64 is found", () => {
    expect(findingsOf(faultyRoute("split-over-class"), "split-over-class")).toMatchObject([
      {
        message: "At terminal T1 the light of Hub port 1 is split more often than G-PON B+ allows.",
        measured: 128,
        limit: 64,
      },
    ]);
  });

  it("light split to as many as its class allows is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "feed", "feed-1", { hubSplitCount: 8 }), "split-over-class")).toEqual([]);
  });
});
