import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute, withLateral } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("trace-event-missing", () => {
  it("a tap whose loss does not show is found", () => {
    expect(findingsOf(faultyRoute("trace-event-missing"), "trace-event-missing")).toMatchObject([
      { message: "Fiber 1 of cable C1 at 1550 nm shows nothing for the tap at terminal T1." },
    ]);
  });

  it("a splice that does not show is quiet", () => {
    const route = withTrace(withLateral(), { fiber: 25 }, [endAt(5.05 + 45 * 1.01)]);
    expect(findingsOf(route, "trace-event-missing")).toEqual([]);
  });

  it("what lies beyond a break is quiet", () => {
    expect(findingsOf(faultyRoute("fiber-broken"), "trace-event-missing")).toEqual([]);
  });
});
