import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { drop1, routeRead } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

describe("built-port", () => {
  it("a drop in port 3 that was drawn on port 1 is found, with the edit that draws it there", () => {
    expect(findingsOf(faultyRoute("built-port"), "built-port")).toMatchObject([
      {
        message: "The drop of 1 Test Rd is in port 3 of terminal T1; it was drawn on port 1.",
        fixes: [{ command: "drop.move", input: { dropId: "drop-1", terminalId: "terminal-1", port: 3 } }],
      },
    ]);
  });

  it("a drop in a port drawn for another is found, and cannot be drawn there", () => {
    expect(findingsOf(routeRead(readingRow(drop1, "portOfDrop", 2)), "built-port")).toMatchObject([{ fixes: [] }]);
  });

  it("a drop in its own port is quiet", () => {
    expect(findingsOf(routeRead(readingRow(drop1, "portOfDrop", 1)), "built-port")).toEqual([]);
  });
});
