import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("drop-clearance", () => {
  it("a drop that comes down over the road is found", () => {
    expect(findingsOf(faultyRoute("drop-clearance"), "drop-clearance")).toMatchObject([
      {
        message:
          "Over Test Rd on the way from terminal T1 to 1 Test Rd the drop is too low in every case, most at the hot condition.",
        limit: 4.7244,
      },
    ]);
  });

  it("a drop attached high is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("drop-clearance"), "livingUnit", "unit-1", { attachHeightM: 7 }),
        "drop-clearance",
      ),
    ).toEqual([]);
  });
});
