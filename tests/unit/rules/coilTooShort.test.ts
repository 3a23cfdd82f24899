import { describe, expect, it } from "vitest";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, rowOf } from "../../fixtures/route/faultyRoutes.ts";

describe("coil-too-short", () => {
  it("a coil of 3 m where the opening takes 6.096 m is found", () => {
    expect(findingsOf(faultyRoute("coil-too-short"), "coil-too-short")).toMatchObject([
      { message: "The coil at terminal T1 is shorter than its opening takes.", measured: 3, limit: 6.096 },
    ]);
  });

  it("a terminal with two coils that hold enough together is quiet", () => {
    expect(
      findingsOf(
        withRows(changed(smallRoute(), "slack", "coil-1", { storedM: 3 }), "slack", [
          { ...rowOf(smallRoute(), "slack", "coil-1"), id: "coil-again", storedM: 3.1 },
        ]),
        "coil-too-short",
      ),
    ).toEqual([]);
  });
});
