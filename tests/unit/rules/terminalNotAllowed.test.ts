import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-not-allowed", () => {
  it("a terminal beside a pole that allows none is found", () => {
    expect(findingsOf(faultyRoute("terminal-not-allowed"), "terminal-not-allowed")).toMatchObject([
      { message: "Terminal T1 hangs beside pole P2, where none is allowed." },
    ]);
  });

  it("a pole that allows none and has none beside it is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "pole", "pole-1", { terminalAllowed: false }), "terminal-not-allowed"),
    ).toEqual([]);
  });
});
