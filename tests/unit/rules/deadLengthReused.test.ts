import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, tapChain } from "../../fixtures/route/faultyRoutes.ts";

describe("dead-length-reused", () => {
  it("a terminal lit beyond the tap of another is found where the company leaves such fiber dark", () => {
    expect(findingsOf(faultyRoute("dead-length-reused"), "dead-length-reused")).toMatchObject([
      {
        message:
          "Terminal T2 is lit over fiber 1 of cable C1 beyond the tap of terminal T1, and the company leaves such fiber dark.",
        fixes: [{ command: "fiber.give" }],
      },
    ]);
  });

  it("no other fiber is offered where the hub has no leg left for it, and the chain is found all the same", () => {
    const full = changed(faultyRoute("dead-length-reused"), "feed", "feed-1", { hubSplitCount: 1 });
    expect(findingsOf(full, "dead-length-reused")).toMatchObject([{ fixes: [] }]);
  });

  it("the same chain of taps is quiet", () => {
    const found = findingsOf(tapChain({ deadLength: "reused" })).map((one) => one.ruleId);
    expect(found).toEqual([]);
  });

  it("terminals with a fiber each are quiet", () => {
    expect(findingsOf(smallRoute(), "dead-length-reused")).toEqual([]);
  });
});
