import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("light-differential", () => {
  it("two units of one hub output that differ by more than their class allows are found", () => {
    expect(findingsOf(faultyRoute("light-differential"), "light-differential")).toMatchObject([
      {
        message:
          "3 Test Rd and 2 Test Rd, both lit by Hub port 1, differ in loss on the way up by more than G-PON B+ allows.",
        measured: expect.closeTo(0.4183, 4),
        limit: 0.3,
      },
    ]);
  });

  it("the same two within what their class allows are quiet", () => {
    const route = changed(faultyRoute("light-differential"), "opticalClass", "class-b-plus", { differentialDb: 15 });
    expect(findingsOf(route, "light-differential")).toEqual([]);
  });

  it("a hub output with nobody on it is quiet", () => {
    const route = changed(smallRoute(), "opticalClass", "class-b-plus", { differentialDb: 0.001 });
    expect(findingsOf(changed(route, "fiberUse", "use-2", { feedId: "feed-1" }), "light-differential").length).toBe(1);
    expect(
      findingsOf(route, "light-differential").filter((one) => one.subjects.some(({ id }) => id === "feed-2")),
    ).toEqual([]);
  });
});
