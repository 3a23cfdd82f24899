import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, spareM, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("trace-without-fiber", () => {
  it("a trace nobody has given to a fiber is found", () => {
    expect(findingsOf(faultyRoute("trace-without-fiber"), "trace-without-fiber")).toMatchObject([
      { message: "Nobody has said which fiber trace C1-F040.sor is of." },
    ]);
  });

  it("a trace of a fiber of the route is quiet", () => {
    expect(findingsOf(withTrace(smallRoute(), {}, [endAt(spareM)]), "trace-without-fiber")).toEqual([]);
  });
});
