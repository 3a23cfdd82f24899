import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { bond1, routeRead } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

describe("built-bond", () => {
  it("a ground of 40 ohm where 25 is the most is found", () => {
    expect(findingsOf(faultyRoute("built-bond"), "built-bond")).toMatchObject([
      { message: "The ground at pole P1 has more resistance than a bond may have.", measured: 40, limit: 25 },
    ]);
  });

  it("a bond that does not conduct is found", () => {
    expect(findingsOf(routeRead(readingRow(bond1, "continuity", 0)), "built-bond")).toMatchObject([
      { message: "The bond at pole P1 does not conduct." },
    ]);
  });

  it("a bond that conducts to a ground of 25 ohm is quiet", () => {
    const route = routeRead(readingRow(bond1, "continuity", 1), readingRow(bond1, "resistance", 25));
    expect(findingsOf(route, "built-bond")).toEqual([]);
  });
});
