import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("coil-away-from-terminal", () => {
  it("a coil out in the span is found", () => {
    expect(findingsOf(faultyRoute("coil-away-from-terminal"), "coil-away-from-terminal")).toMatchObject([
      {
        message: "The coil for terminal T1 hangs too far along the span.",
        measured: expect.closeTo(19.0856, 6),
        limit: 3.048,
      },
    ]);
  });

  it("a coil within the opening's length is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "slack", "coil-1", { offsetM: 3.9 }), "coil-away-from-terminal")).toEqual(
      [],
    );
  });
});
