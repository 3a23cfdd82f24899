import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("communication-separation-at-pole", () => {
  it("telephone 8 in below our strand is found", () => {
    expect(
      findingsOf(faultyRoute("communication-separation-at-pole"), "communication-separation-at-pole"),
    ).toMatchObject([
      {
        message: "At pole P2 our strand is too close to the communication of Telephone.",
        measured: expect.closeTo(0.2, 6),
        limit: 0.3048,
      },
    ]);
  });

  it("telephone 12 in above our strand is quiet", () => {
    expect(
      findingsOf(
        changed(smallRoute(), "attachment", "telephone-2", { heightM: 6.6048 }),
        "communication-separation-at-pole",
      ),
    ).toEqual([]);
  });
});
