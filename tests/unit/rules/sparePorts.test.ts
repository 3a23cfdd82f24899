import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("spare-ports", () => {
  it("a terminal with six ports left where seven are to be spare is found", () => {
    expect(findingsOf(faultyRoute("spare-ports"), "spare-ports")).toMatchObject([
      { message: "Terminal T1 keeps too few spare ports.", measured: 6, limit: 7 },
    ]);
  });

  it("a reserved port is no spare one", () => {
    const route = changed(smallRoute({ settings: { sparePortCount: 6 } }), "terminal", "terminal-1", {
      reservedPortCount: 1,
    });
    expect(findingsOf(route, "spare-ports")).toMatchObject([{ measured: 5, limit: 6 }]);
  });

  it("a terminal with as many ports left as wanted is quiet", () => {
    expect(findingsOf(smallRoute({ settings: { sparePortCount: 6 } }), "spare-ports")).toEqual([]);
  });
});
