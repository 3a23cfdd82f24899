import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-standoff", () => {
  it("a terminal 59 in from the pole is found", () => {
    expect(findingsOf(faultyRoute("terminal-standoff"), "terminal-standoff")).toMatchObject([
      { message: "Terminal T1 does not hang at the standard distance from pole P2.", measured: 1.5, limit: 0.9144 },
    ]);
  });

  it("a terminal 36 in from the pole is quiet", () => {
    expect(findingsOf(smallRoute(), "terminal-standoff")).toEqual([]);
  });

  it("a terminal half an inch off is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "terminal", "terminal-1", { offsetM: 0.9144 + 0.0127 }), "terminal-standoff"),
    ).toEqual([]);
  });

  it("a terminal 36 in from the span's far pole is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "terminal", "terminal-1", { offsetM: 45 - 0.9144 }), "terminal-standoff"),
    ).toEqual([]);
  });
});
