import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("drop-over-reach", () => {
  it("a drop longer than the reach is found", () => {
    expect(findingsOf(faultyRoute("drop-over-reach"), "drop-over-reach")).toMatchObject([
      {
        message: "The drop from terminal T2 to 3 Test Rd is too long.",
        measured: expect.closeTo(95.433, 3),
        limit: 91.44,
      },
    ]);
  });

  it("a drop just within the reach is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "livingUnit", "unit-3", { eastM: 90.9144, northM: 91.44 }), "drop-over-reach"),
    ).toEqual([]);
  });
});
