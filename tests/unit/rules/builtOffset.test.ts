import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { routeRead, terminal1 } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

describe("built-offset", () => {
  it("a terminal hung 11 in farther out than its 36 in is found, with the edit that draws it there", () => {
    const [finding] = findingsOf(faultyRoute("built-offset"), "built-offset");
    expect(finding).toMatchObject({
      message: "Terminal T1 was hung farther from pole P2 than drawn.",
      limit: 0.0508,
      fixes: [{ label: "Draw it as built", command: "terminal.move", input: { offsetM: 1.2 } }],
    });
    expect(finding?.measured).toBeCloseTo(0.2856, 9);
  });

  it("a terminal hung an inch and a half off is quiet", () => {
    expect(findingsOf(routeRead(readingRow(terminal1, "offset", 0.9144 - 0.0381)), "built-offset")).toEqual([]);
  });
});
