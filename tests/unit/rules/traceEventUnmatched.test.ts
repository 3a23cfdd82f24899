import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, spareM, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("trace-event-unmatched", () => {
  it("a loss in the middle of a span is found, with its place on the strand", () => {
    expect(findingsOf(faultyRoute("trace-event-unmatched"), "trace-event-unmatched")).toMatchObject([
      {
        message:
          "Fiber 40 of cable C1 at 1550 nm loses light 76 ft past pole P2 towards pole P3, where nothing is drawn: 0.60 dB.",
      },
    ]);
  });

  it("the instrument's own start and what is drawn are quiet", () => {
    const route = withTrace(smallRoute(), {}, [{ atM: 0, reflects: true }, endAt(spareM)]);
    expect(findingsOf(route, "trace-event-unmatched")).toEqual([]);
  });
});
