import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("lateral-not-spliced", () => {
  it("a fiber in use of a lateral that is spliced to nothing is found", () => {
    expect(findingsOf(faultyRoute("lateral-not-spliced"), "lateral-not-spliced")).toMatchObject([
      { message: "Fiber 2 of cable C2 is in use but not spliced through at closure S1." },
    ]);
  });

  it("a fiber that the parent cable feeds is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("lateral-not-spliced"), "fiberUse", "lateral-2", { fiber: 1 }),
        "lateral-not-spliced",
      ),
    ).toEqual([]);
  });
});
