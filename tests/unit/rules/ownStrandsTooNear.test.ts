import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

const rule = "own-strands-too-near";

describe(rule, () => {
  it("two strands of ours 6 in from each other are found", () => {
    expect(findingsOf(faultyRoute(rule), rule)).toMatchObject([
      {
        message:
          "At pole P2 two strands of ours are nearer than messengers of communication may be without the agreement of their owners.",
        measured: expect.closeTo(0.1524, 9),
        limit: 0.3048,
      },
    ]);
  });

  it("one strand, and two a foot from each other, are quiet", () => {
    expect(findingsOf(smallRoute(), rule)).toEqual([]);
    const apart = changed(faultyRoute(rule), "attachment", "strand-2-upper", { heightM: 6.3 + 0.3048 });
    expect(findingsOf(apart, rule)).toEqual([]);
  });
});
