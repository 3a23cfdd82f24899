import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("span-length-differs", () => {
  it("a span recorded a metre longer than its poles are apart is found", () => {
    expect(findingsOf(faultyRoute("span-length-differs"), "span-length-differs")).toMatchObject([
      { message: "Span P1 to P2 is recorded with another length than its poles are apart.", measured: 46, limit: 45 },
    ]);
  });

  it("a span recorded within one in a hundred is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "span", "span-1", { lengthM: 45.45 }), "span-length-differs")).toEqual([]);
  });
});
