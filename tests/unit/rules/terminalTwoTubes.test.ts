import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-two-tubes", () => {
  it("a terminal that takes fibers out of two tubes is found", () => {
    expect(findingsOf(faultyRoute("terminal-two-tubes"), "terminal-two-tubes")).toMatchObject([
      { message: "Terminal T1 takes fibers out of more than one tube: 1, 2.", measured: 2, limit: 1 },
    ]);
  });

  it("two fibers of one tube are quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("terminal-two-tubes"), "fiberUse", "use-far", { fiber: 12 }),
        "terminal-two-tubes",
      ),
    ).toEqual([]);
  });
});
