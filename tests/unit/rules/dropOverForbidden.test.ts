import { describe, expect, it } from "vitest";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, passing } from "../../fixtures/route/faultyRoutes.ts";

const id = "drop-over-forbidden";

describe(id, () => {
  it("a drop over what lies before its own unit and no drop may pass is found, with the catalogue's basis", () => {
    expect(findingsOf(faultyRoute(id), id)).toMatchObject([
      {
        message: "The drop from terminal T1 to 1 Test Rd passes over Test Rd (road), which no drop may.",
        basis: { document: "made up for tests", mark: "practice" },
      },
    ]);
  });

  it("a drop over a road that crosses the line beside its terminal is found", () => {
    const forbidden = withRows(smallRoute(), "dropPassing", [passing("road", "forbidden", 0)]);
    expect(findingsOf(forbidden, id)).toEqual([]);
    const beyond = changed(forbidden, "livingUnit", "unit-1", { eastM: 75 });
    expect(findingsOf(beyond, id).map((one) => one.message)).toEqual([
      "The drop from terminal T1 to 1 Test Rd passes over Test Rd (road), which no drop may.",
    ]);
  });

  it("a way past the same road that only costs a price is quiet", () => {
    const priced = withRows(smallRoute(), "dropPassing", [passing("road", "allowed", 80)]);
    expect(findingsOf(changed(priced, "livingUnit", "unit-1", { eastM: 75 }), id)).toEqual([]);
  });

  it("a drop too short to come to what lies before its unit is quiet", () => {
    expect(findingsOf(changed(faultyRoute(id), "dropCrossing", "before-1", { fromUnitM: 60 }), id)).toEqual([]);
  });
});
