import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("unit-without-port", () => {
  it("a living unit without a port is found, with the terminal that has one to spare", () => {
    expect(findingsOf(faultyRoute("unit-without-port"), "unit-without-port")).toMatchObject([
      { message: "1 Test Rd has no port: terminal T1 has one to spare." },
    ]);
  });

  it("a living unit with a port is quiet", () => {
    expect(findingsOf(smallRoute(), "unit-without-port")).toEqual([]);
  });
});
