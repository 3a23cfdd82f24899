import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("supply-separation-in-span", () => {
  it("a neutral that comes too near in the span is found in every span it hangs in", () => {
    expect(findingsOf(faultyRoute("supply-separation-in-span"), "supply-separation-in-span")).toMatchObject([
      { measured: expect.closeTo(0.5, 6), limit: 0.5715 },
      {
        message:
          "In span P2 to P3 our strand comes too close to the neutral of Power company, the other wire at its assumed sag.",
      },
      {},
    ]);
  });

  it("a neutral that sags as our strand does and clears it is quiet", () => {
    expect(
      findingsOf(
        ["neutral-2", "neutral-3"].reduce(
          (route, id) => changed(route, "attachment", id, { heightM: 6.8716 }),
          smallRoute(),
        ),
        "supply-separation-in-span",
      ),
    ).toEqual([]);
  });
});
