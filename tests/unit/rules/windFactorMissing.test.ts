import { describe, expect, it } from "vitest";
import { smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

const rule = "wind-factor-missing";

describe(rule, () => {
  it("strand higher than the factors of wind are told for is found, with the height", () => {
    expect(findingsOf(faultyRoute(rule), rule)).toMatchObject([
      {
        message:
          "In span P1 to P2 the catalogue has no factor of extreme wind for a strand so high: the last one stands in.",
        measured: 16,
        limit: 15,
      },
      { measured: 16 },
    ]);
  });

  it("a catalogue without a factor of span is found", () => {
    const bare = ["span-76", "span-152"].reduce((route, id) => without(route, "windFactor", id), extremeRoute());
    expect(findingsOf(bare, rule)[0]).toMatchObject({
      message: "In span P1 to P2 the catalogue has no factor of extreme wind for its span.",
      measured: null,
    });
  });

  it("strand within the factors is quiet", () => {
    expect(findingsOf(extremeRoute(), rule)).toEqual([]);
  });

  it("a route without extreme wind is quiet", () => {
    expect(findingsOf(smallRoute(), rule)).toEqual([]);
  });
});
