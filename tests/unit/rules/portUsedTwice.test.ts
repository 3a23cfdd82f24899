import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("port-used-twice", () => {
  it("a port with two drops is found", () => {
    expect(findingsOf(faultyRoute("port-used-twice"), "port-used-twice")).toMatchObject([
      { message: "Port 1 of terminal T1 is given more than once: 1 Test Rd; 2 Test Rd.", measured: 2 },
    ]);
  });

  it("the same port number of another terminal is quiet", () => {
    expect(findingsOf(changed(smallRoute(), "drop", "drop-3", { port: 2 }), "port-used-twice")).toEqual([]);
  });
});
