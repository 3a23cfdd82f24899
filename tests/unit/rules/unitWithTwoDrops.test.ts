import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("unit-with-two-drops", () => {
  it("a living unit with two drops is found", () => {
    expect(findingsOf(faultyRoute("unit-with-two-drops"), "unit-with-two-drops")).toMatchObject([
      { message: "1 Test Rd is given more than one drop: terminal T1 port 1, terminal T1 port 3.", measured: 2 },
    ]);
  });

  it("a living unit with one drop is quiet", () => {
    expect(findingsOf(smallRoute(), "unit-with-two-drops")).toEqual([]);
  });
});
