import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { drop1, routeRead } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

describe("built-house-tag", () => {
  it("a house tagged with another port is found, with the edit that gives it that port", () => {
    expect(findingsOf(faultyRoute("built-house-tag"), "built-house-tag")).toMatchObject([
      {
        message: "The house at 1 Test Rd is tagged T1-3; its drop was drawn as T1-1.",
        fixes: [{ command: "drop.move", input: { dropId: "drop-1", terminalId: "terminal-1", port: 3 } }],
      },
    ]);
  });

  it("a house tagged with a name that is nowhere on the route is found, without a mend", () => {
    expect(findingsOf(routeRead(readingRow(drop1, "houseTag", "Z9")), "built-house-tag")).toMatchObject([
      { fixes: [] },
    ]);
  });

  it("a house with its own tag, however written, is quiet", () => {
    for (const tag of ["T1-1", " t1 - 1 ", "T1–1", "T1 1"])
      expect(findingsOf(routeRead(readingRow(drop1, "houseTag", tag)), "built-house-tag")).toEqual([]);
  });
});
