import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("light-too-weak", () => {
  it("a living unit behind too much loss is found with the company's margin in it", () => {
    expect(findingsOf(faultyRoute("light-too-weak"), "light-too-weak")).toMatchObject([
      {
        message: "1 Test Rd, port 1 of terminal T1, loses more light on the way up than G-PON B+ allows.",
        measured: expect.closeTo(28.184, 3),
        limit: 28,
      },
      { measured: expect.closeTo(28.183, 3) },
    ]);
  });

  it("the same loss without a margin is quiet", () => {
    expect(
      findingsOf(changed(faultyRoute("light-too-weak"), "settings", "settings", { marginDb: 0 }), "light-too-weak"),
    ).toEqual([]);
  });
});
