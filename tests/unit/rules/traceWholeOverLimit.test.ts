import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, spareM, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("trace-whole-over-limit", () => {
  it("a fiber that loses too much from end to end is found", () => {
    expect(findingsOf(faultyRoute("trace-whole-over-limit"), "trace-whole-over-limit")).toMatchObject([
      { message: expect.stringContaining("loses more light from end to end"), measured: 3 },
    ]);
  });

  it("a fiber whose instrument summed up nothing is quiet", () => {
    expect(findingsOf(withTrace(smallRoute(), {}, [endAt(spareM)]), "trace-whole-over-limit")).toEqual([]);
  });
});
