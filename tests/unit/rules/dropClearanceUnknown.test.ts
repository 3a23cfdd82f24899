import { describe, expect, it } from "vitest";
import { changed, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("drop-clearance-unknown", () => {
  it("a drop to a house whose ground nobody measured is found", () => {
    expect(findingsOf(faultyRoute("drop-clearance-unknown"), "drop-clearance-unknown")).toMatchObject([
      {
        message:
          "Over Test Rd on the way from terminal T1 to 1 Test Rd the clearance is not checked. Nobody measured the ground at the building.",
      },
    ]);
  });

  it("a road the clearance set has no limit over is found", () => {
    const route = changed(faultyRoute("drop-clearance-unknown"), "livingUnit", "unit-1", { groundM: 100 });
    const bare = without(without(route, "clearanceLimit", "limit-road"), "clearanceLimit", "limit-dropRoad");
    expect(findingsOf(bare, "drop-clearance-unknown")).toHaveLength(1);
  });

  it("a drop whose ends are known is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("drop-clearance-unknown"), "livingUnit", "unit-1", { groundM: 100 }),
        "drop-clearance-unknown",
      ),
    ).toEqual([]);
  });
});
