import { describe, expect, it } from "vitest";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("communication-separation-in-span", () => {
  it("telephone that our sagging strand comes down to is found", () => {
    expect(
      findingsOf(faultyRoute("communication-separation-in-span"), "communication-separation-in-span"),
    ).toMatchObject([
      {
        message:
          "In span P2 to P3 our strand comes too close to the communication of Telephone, the strand at its largest sag.",
        measured: expect.closeTo(0.06, 3),
        limit: 0.1016,
      },
    ]);
  });

  it("telephone on one pole of the span only is quiet", () => {
    expect(
      findingsOf(
        without(changed(smallRoute(), "attachment", "telephone-2", { heightM: 5.9 }), "attachment", "telephone-3"),
        "communication-separation-in-span",
      ),
    ).toEqual([]);
  });
});
