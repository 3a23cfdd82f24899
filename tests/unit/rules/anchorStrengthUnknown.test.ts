import { describe, expect, it } from "vitest";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

const rule = "anchor-strength-unknown";

describe(rule, () => {
  it("an anchor of which nobody told what it holds is found", () => {
    expect(findingsOf(faultyRoute(rule), rule)).toMatchObject([
      { message: "At pole P1 nobody told what the anchor of the guy holds: it is not checked.", severity: "warning" },
    ]);
  });

  it("an anchor known to hold, one that nothing pulls, and one without a limit are quiet", () => {
    expect(findingsOf(smallRoute(), rule)).toEqual([]);
    const idle = changed(faultyRoute(rule), "span", "span-1", { strandSectionId: null });
    expect(findingsOf(idle, rule)).toEqual([]);
    const limit = [...smallRoute().strengthLimit.values()].find((one) => one.part === "anchor");
    expect(findingsOf(without(faultyRoute(rule), "strengthLimit", limit?.id ?? ""), rule)).toEqual([]);
  });
});
