import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("splitter-without-fiber", () => {
  it("a splitter that no fiber feeds is found", () => {
    expect(findingsOf(faultyRoute("splitter-without-fiber"), "splitter-without-fiber")).toMatchObject([
      { message: "No fiber feeds splitter 1 of terminal T1." },
    ]);
  });

  it("a splitter with its fiber is quiet", () => {
    expect(findingsOf(smallRoute(), "splitter-without-fiber")).toEqual([]);
  });
});
