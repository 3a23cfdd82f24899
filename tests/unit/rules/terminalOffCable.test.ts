import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-off-cable", () => {
  it("a terminal in a span its cable does not pass is found", () => {
    expect(findingsOf(faultyRoute("terminal-off-cable"), "terminal-off-cable")).toMatchObject([
      { message: "Terminal T2 hangs in span P3 to P4, where its cable C1 does not pass." },
    ]);
  });

  it("a terminal in a span its cable enters at the far pole is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "cableRun", "run-3", { reversed: true }), "terminal-off-cable")).toEqual(
      [],
    );
  });
});
