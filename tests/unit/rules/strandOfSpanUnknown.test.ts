import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

const rule = "strand-of-span-unknown";

describe(rule, () => {
  it("a pole with two strands of ours is found", () => {
    expect(findingsOf(faultyRoute(rule), rule)).toMatchObject([
      {
        message:
          "Pole P2 carries 2 strands of ours: all its spans are taken to hang on the lowest, and what is near the others in the spans is not checked.",
        measured: 2,
        limit: 1,
      },
    ]);
  });

  it("a pole with one strand is quiet", () => {
    expect(findingsOf(smallRoute(), rule)).toEqual([]);
  });
});
