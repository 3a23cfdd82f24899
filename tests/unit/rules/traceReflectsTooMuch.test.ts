import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { endAt, spareM, withTrace } from "../../fixtures/route/tracedRoute.ts";

describe("trace-reflects-too-much", () => {
  it("a whole fiber that sends too much light back is found", () => {
    expect(findingsOf(faultyRoute("trace-reflects-too-much"), "trace-reflects-too-much")).toMatchObject([
      { measured: 25, limit: 32 },
    ]);
  });

  it("a connection behind a launch lead that reflects too much is found", () => {
    const route = withTrace(smallRoute(), { leadM: 150 }, [
      { atM: 0, reflects: true },
      { atM: 150, lossDb: 0.3, reflects: true, reflectanceDb: -38 },
      endAt(150 + spareM),
    ]);
    expect(findingsOf(route, "trace-reflects-too-much")).toMatchObject([
      {
        message: "Fiber 40 of cable C1 at 1550 nm: the connection at the hub reflects too much light.",
        measured: -38,
        limit: -45,
      },
    ]);
  });

  it("a reflection nobody measured is quiet", () => {
    expect(findingsOf(withTrace(smallRoute(), {}, [endAt(spareM)]), "trace-reflects-too-much")).toEqual([]);
  });
});
