import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("fiber-cut-upstream", () => {
  it("a terminal on a fiber that is dead before it is found", () => {
    expect(findingsOf(faultyRoute("fiber-cut-upstream"), "fiber-cut-upstream")).toMatchObject([
      { message: "Terminal T2 gets no light: fiber 2 of cable C1 is cut at closure S1 before it." },
    ]);
  });

  it("a terminal on a fiber that is dead only beyond it is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("fiber-cut-upstream"), "closure", "closure-1", { spanId: "span-3", offsetM: 40 }),
        "fiber-cut-upstream",
      ),
    ).toEqual([]);
  });

  it("a reserved fiber is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("fiber-cut-upstream"), "fiberUse", "dead-2", { purpose: "reserved" }),
        "fiber-cut-upstream",
      ),
    ).toEqual([]);
  });
});
