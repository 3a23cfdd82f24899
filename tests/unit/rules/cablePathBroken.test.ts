import { describe, expect, it } from "vitest";
import { smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("cable-path-broken", () => {
  it("a cable whose spans do not meet is found", () => {
    expect(findingsOf(faultyRoute("cable-path-broken"), "cable-path-broken")).toMatchObject([
      { message: "Cable C1 ends at pole P2 and goes on somewhere else.", at: { eastM: 45, northM: 0 } },
    ]);
  });

  it("a cable that turns back into a span from its far pole is quiet", () => {
    expect(
      findingsOf(
        withRows(without(without(smallRoute(), "cableRun", "run-2"), "cableRun", "run-3"), "cableRun", [
          { id: "run-back", cableId: "cable-1", spanId: "span-1", sequence: 2, reversed: true },
        ]),
        "cable-path-broken",
      ),
    ).toEqual([]);
  });
});
