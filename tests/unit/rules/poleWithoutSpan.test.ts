import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("pole-without-span", () => {
  it("a pole that no span goes to is found", () => {
    expect(findingsOf(faultyRoute("pole-without-span"), "pole-without-span")).toMatchObject([
      { message: "No span goes to pole P5." },
    ]);
  });

  it("the last pole of the line is quiet", () => {
    expect(findingsOf(smallRoute(), "pole-without-span")).toEqual([]);
  });
});
