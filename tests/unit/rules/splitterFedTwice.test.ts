import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("splitter-fed-twice", () => {
  it("a splitter with two fibers is found", () => {
    expect(findingsOf(faultyRoute("splitter-fed-twice"), "splitter-fed-twice")).toMatchObject([
      { message: "Splitter 1 of terminal T1 is given more than one fiber: 1, 3.", measured: 2 },
    ]);
  });

  it("a second fiber held for no splitter is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("splitter-fed-twice"), "fiberUse", "use-again", { splitterId: null }),
        "splitter-fed-twice",
      ),
    ).toEqual([]);
  });
});
