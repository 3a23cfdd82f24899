import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("port-beyond-model", () => {
  it("port 9 of a terminal of eight is found", () => {
    expect(findingsOf(faultyRoute("port-beyond-model"), "port-beyond-model")).toMatchObject([
      { message: "2 Test Rd is on port 9 of terminal T1, which has fewer.", measured: 9, limit: 8 },
    ]);
  });

  it("the last port of the face is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "drop", "drop-2", { port: 8 }), "port-beyond-model")).toEqual([]);
  });
});
