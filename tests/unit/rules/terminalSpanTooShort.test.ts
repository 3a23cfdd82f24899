import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-span-too-short", () => {
  it("every terminal in a span shorter than the company's least is found", () => {
    expect(findingsOf(faultyRoute("terminal-span-too-short"), "terminal-span-too-short")).toMatchObject([
      { message: "Terminal T1 hangs in span P2 to P3, which is too short for it.", measured: 45, limit: 50 },
      { measured: 45 },
    ]);
  });

  it("a short span without a terminal is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "span", "span-1", { lengthM: 3 }), "terminal-span-too-short")).toEqual([]);
  });
});
