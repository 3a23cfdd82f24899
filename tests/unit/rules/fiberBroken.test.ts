import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, spareM, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("fiber-broken", () => {
  it("a fiber that ends in the second span is found, with the place past the pole before it", () => {
    expect(findingsOf(faultyRoute("fiber-broken"), "fiber-broken")).toMatchObject([
      {
        message: "Fiber 40 of cable C1 at 1550 nm ends 76 ft past pole P2 towards pole P3, give or take 21 ft.",
        measured: 75,
        limit: expect.closeTo(spareM, 9),
        subjects: [
          { table: "trace", id: "trace-1" },
          { table: "traceEvent", id: "trace-1 1" },
          { table: "pole", id: "pole-2" },
        ],
      },
    ]);
  });

  it("a fiber that ends within what coils may differ is quiet", () => {
    expect(findingsOf(withTrace(smallRoute(), {}, [endAt(spareM - 5)]), "fiber-broken")).toEqual([]);
  });

  it("a trace that a later one of the same fiber took the place of is quiet", () => {
    const mended = { id: "trace-2", takenIso: "2026-05-06T09:00:00.000Z" };
    const route = withTrace(faultyRoute("fiber-broken"), mended, [endAt(spareM)]);
    expect(findingsOf(route, "fiber-broken")).toEqual([]);
  });
});
