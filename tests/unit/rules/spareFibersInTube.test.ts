import { describe, expect, it } from "vitest";
import { without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("spare-fibers-in-tube", () => {
  it("a tube with one fiber left where two are to be spare is found", () => {
    expect(findingsOf(faultyRoute("spare-fibers-in-tube"), "spare-fibers-in-tube")).toMatchObject([
      { message: "Cable C1 keeps too few spare fibers in tube 1.", measured: 1, limit: 2 },
    ]);
  });

  it("a tube with two fibers left is quiet", () => {
    expect(
      findingsOf(without(faultyRoute("spare-fibers-in-tube"), "fiberUse", "held-11"), "spare-fibers-in-tube"),
    ).toEqual([]);
  });
});
