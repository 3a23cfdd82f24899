import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, withLateral } from "../../fixtures/route/faultyRoutes.ts";

describe("coil-of-another-cable", () => {
  it("a coil of the lateral at a terminal of the main cable is found", () => {
    expect(findingsOf(faultyRoute("coil-of-another-cable"), "coil-of-another-cable")).toMatchObject([
      { message: "The coil at terminal T1 is of cable C2, but the terminal opens cable C1." },
    ]);
  });

  it("a storage coil of the lateral is quiet", () => {
    expect(
      findingsOf(
        changed(withLateral(), "slack", "coil-1", { cableId: "cable-2", kind: "storage", terminalId: null }),
        "coil-of-another-cable",
      ),
    ).toEqual([]);
  });
});
