import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("span-over-longest", () => {
  it("every span longer than the company builds is found", () => {
    expect(findingsOf(faultyRoute("span-over-longest"), "span-over-longest")).toMatchObject([
      { measured: 45, limit: 44 },
      { measured: 45 },
      { measured: 45 },
    ]);
  });

  it("a span as long as the longest is quiet", () => {
    expect(findingsOf(smallRoute({ settings: { maxSpanM: 45 } }), "span-over-longest")).toEqual([]);
  });
});
