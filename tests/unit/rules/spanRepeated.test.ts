import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("span-repeated", () => {
  it("a second span between the same poles, the other way round, is found", () => {
    expect(findingsOf(faultyRoute("span-repeated"), "span-repeated")).toMatchObject([
      { message: "More than one span runs from pole P1 to P2.", measured: 2 },
    ]);
  });

  it("a line of spans that meet at poles is quiet", () => {
    expect(findingsOf(smallRoute(), "span-repeated")).toEqual([]);
  });
});
