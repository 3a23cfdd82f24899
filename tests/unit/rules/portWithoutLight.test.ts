import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("port-without-light", () => {
  it("a drop behind a splitter without a fiber is found", () => {
    expect(findingsOf(faultyRoute("port-without-light"), "port-without-light")).toMatchObject([
      { message: "1 Test Rd gets no light. No fiber feeds the splitter behind port 9 of terminal T1." },
    ]);
  });

  it("a spare port without light is quiet", () => {
    expect(
      findingsOf(changed(faultyRoute("port-without-light"), "drop", "drop-1", { port: 1 }), "port-without-light"),
    ).toEqual([]);
  });
});
