import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("cable-longer-than-reel", () => {
  it("a cable 8 in longer than its reel, coils included, is found", () => {
    expect(findingsOf(faultyRoute("cable-longer-than-reel"), "cable-longer-than-reel")).toMatchObject([
      { message: "Cable C1 with its coils is longer than its reel.", measured: expect.closeTo(147.192, 6), limit: 147 },
    ]);
  });

  it("a cable that takes its reel to the last inch is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "cable", "cable-1", { reelLengthM: 147.192 }), "cable-longer-than-reel"),
    ).toEqual([]);
  });
});
