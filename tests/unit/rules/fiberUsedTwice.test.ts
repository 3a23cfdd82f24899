import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, withLateral } from "../../fixtures/route/faultyRoutes.ts";

describe("fiber-used-twice", () => {
  it("one fiber given to two terminals is found once", () => {
    expect(findingsOf(faultyRoute("fiber-used-twice"), "fiber-used-twice")).toMatchObject([
      { message: "Fiber 1 of cable C1 is used more than once: terminal T1, terminal T2.", measured: 2 },
    ]);
  });

  it("a fiber used before the place where it is dead is quiet", () => {
    expect(findingsOf(faultyRoute("fiber-cut-upstream"), "fiber-used-twice")).toEqual([]);
  });

  it("the same fiber number of another cable is quiet", () => {
    expect(findingsOf(withLateral(), "fiber-used-twice")).toEqual([]);
  });
});
