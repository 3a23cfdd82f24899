import { describe, expect, it } from "vitest";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("trace-loss-over-limit", () => {
  it("a splice of 0.35 dB is found", () => {
    expect(findingsOf(faultyRoute("trace-loss-over-limit"), "trace-loss-over-limit")).toMatchObject([
      {
        message:
          "Fiber 25 of cable C1 at 1550 nm: the splice at closure S1 loses too much light, seen from one end alone.",
        measured: 0.35,
        limit: 0.2,
      },
    ]);
  });

  it("a splice that the other direction shows as a gain is quiet", () => {
    const back = { id: "trace-2", fiber: 25, fromEnd: "far" } as const;
    const route = withTrace(faultyRoute("trace-loss-over-limit"), back, [
      { atM: 45 * 1.01, lossDb: -0.05 },
      endAt(45 * 1.01 + 5.05),
    ]);
    expect(findingsOf(route, "trace-loss-over-limit")).toEqual([]);
  });

  it("a splice whose mean is over the limit is found once, in the trace from the hub", () => {
    const back = { id: "trace-2", fiber: 25, fromEnd: "far" } as const;
    const route = withTrace(faultyRoute("trace-loss-over-limit"), back, [
      { atM: 45 * 1.01, lossDb: 0.25 },
      endAt(45 * 1.01 + 5.05),
    ]);
    expect(findingsOf(route, "trace-loss-over-limit")).toMatchObject([
      { message: expect.stringContaining("as the mean of both directions"), subjects: [{ id: "trace-1" }, {}, {}] },
    ]);
  });
});
