import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("coil-without-terminal", () => {
  it("an access coil that no terminal takes is found", () => {
    expect(findingsOf(faultyRoute("coil-without-terminal"), "coil-without-terminal")).toMatchObject([
      { message: "An access coil of cable C1 in span P2 to P3 waits for no terminal." },
    ]);
  });

  it("a storage coil is quiet", () => {
    expect(
      findingsOf(
        changed(smallRoute(), "slack", "coil-1", { kind: "storage", terminalId: null }),
        "coil-without-terminal",
      ),
    ).toEqual([]);
  });
});
