import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("strength-set-incomplete", () => {
  it("a strength set without guys is found", () => {
    expect(findingsOf(faultyRoute("strength-set-incomplete"), "strength-set-incomplete")).toMatchObject([
      {
        message:
          "The strength set Test strengths has no limit for guys under the district's load: those are not checked.",
      },
    ]);
  });

  it("a whole strength set is quiet", () => {
    expect(findingsOf(smallRoute(), "strength-set-incomplete")).toEqual([]);
  });
});
