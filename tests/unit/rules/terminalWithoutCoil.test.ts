import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-without-coil", () => {
  it("a terminal without a coil is found", () => {
    expect(findingsOf(faultyRoute("terminal-without-coil"), "terminal-without-coil")).toMatchObject([
      { message: "No coil waits at terminal T1 for its opening.", measured: 0, limit: 6.096 },
    ]);
  });

  it("a terminal with its coil is quiet", () => {
    expect(findingsOf(smallRoute(), "terminal-without-coil")).toEqual([]);
  });
});
