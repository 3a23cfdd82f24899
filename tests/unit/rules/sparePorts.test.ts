import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("spare-ports", () => {
  it("a terminal with six ports left where seven are to be spare is found", () => {
    expect(findingsOf(faultyRoute("spare-ports"), "spare-ports")).toMatchObject([
      { message: "Terminal T1 keeps too few spare ports.", measured: 6, limit: 7 },
    ]);
  });

  it("a terminal with as many ports left as wanted is quiet", () => {
    expect(findingsOf(smallRoute({ settings: { sparePortCount: 6 } }), "spare-ports")).toEqual([]);
  });
});
