import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("light-too-strong", () => {
  it("a living unit near a hub without a splitter is found", () => {
    expect(findingsOf(faultyRoute("light-too-strong"), "light-too-strong")).toMatchObject([
      {
        message: "1 Test Rd, port 1 of terminal T1, gets more light than G-PON B+ allows.",
        measured: expect.closeTo(11.78, 2),
        limit: 13,
      },
      { measured: expect.closeTo(11.78, 2) },
    ]);
  });

  it("a hub splitter's loss ahead of the route is quiet", () => {
    expect(findingsOf(smallRoute(), "light-too-strong")).toEqual([]);
  });
});
