import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("sag-beside-neighbour", () => {
  it("a strand that hangs deeper than the telephone line is found", () => {
    expect(findingsOf(faultyRoute("sag-beside-neighbour"), "sag-beside-neighbour")).toMatchObject([
      {
        message: "In span P1 to P2 our strand hangs deeper than the line of Telephone by more than the company allows.",
        measured: expect.closeTo(0.25, 6),
        limit: expect.closeTo(0.05, 6),
      },
    ]);
  });

  it("a strand that hangs like the telephone line is quiet", () => {
    expect(
      findingsOf(
        changed(faultyRoute("sag-beside-neighbour"), "wireSag", "sag-1", { sagM: 0.4 }),
        "sag-beside-neighbour",
      ),
    ).toEqual([]);
  });
});
