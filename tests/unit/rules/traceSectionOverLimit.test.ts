import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, spareM, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("trace-section-over-limit", () => {
  it("fiber of 0.9 dB/km is found, by where its section ends", () => {
    expect(findingsOf(faultyRoute("trace-section-over-limit"), "trace-section-over-limit")).toMatchObject([
      {
        message:
          "Fiber 40 of cable C1 at 1550 nm loses too much light along the section that ends 295 ft past pole P3 towards pole P4.",
        measured: 0.9,
        limit: 0.4,
        unit: "dB/km",
      },
    ]);
  });

  it("a section too short to have a slope is quiet", () => {
    const route = withTrace(smallRoute(), {}, [{ ...endAt(spareM), slopeDbPerKm: 0.9 }]);
    expect(findingsOf(route, "trace-section-over-limit")).toEqual([]);
  });
});
