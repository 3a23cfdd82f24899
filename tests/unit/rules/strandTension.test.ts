import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("strand-tension", () => {
  it("strand pulled over its part of the breaking strength is found in every span", () => {
    expect(findingsOf(faultyRoute("strand-tension"), "strand-tension")).toMatchObject([
      {
        message:
          "In span P1 to P2 the strand is pulled too hard under the load of Heavy and at the stringing temperature.",
        measured: expect.closeTo(5820.84, 2),
        limit: 3600,
      },
      {},
      {},
    ]);
  });

  it("strand pulled too hard in extreme wind and with a worker on it is found, each by its name", () => {
    const limits = ["extremeWind", "worker"].reduce(
      (route, part) => changed(route, "strengthLimit", `strength-strand-${part}`, { limitFrac: 0.1 }),
      extremeRoute(),
    );
    const [first] = findingsOf(limits, "strand-tension");
    expect(first?.message).toBe(
      "In span P1 to P2 the strand is pulled too hard with a worker on the strand and under the load of Wind 40.",
    );
    expect(first?.limit).toBeCloseTo(2958, 6);
  });

  it("strand that holds every case the settings ask for is quiet", () => {
    expect(findingsOf(extremeRoute(), "strand-tension")).toEqual([]);
  });

  it("strand that just holds the district load is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "strandType", "strand-quarter", { breakingN: 5837 / 0.6 }), "strand-tension"),
    ).toEqual([]);
  });
});
