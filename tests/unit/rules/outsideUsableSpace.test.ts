import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("outside-usable-space", () => {
  it("a strand too low on its pole is found", () => {
    expect(findingsOf(faultyRoute("outside-usable-space"), "outside-usable-space")).toMatchObject([
      { message: "At pole P2 our strand hangs below the usable space.", measured: 5, limit: 5.4864 },
    ]);
  });

  it("a strand in the gap at the pole top is found, and a wire above the pole", () => {
    const messages = (id: string, heightM: number) =>
      findingsOf(changed(smallRoute(), "attachment", id, { heightM }), "outside-usable-space").map(
        (one) => one.message,
      );
    expect(messages("strand-2", 10.9)).toEqual(["At pole P2 our strand comes too near the top of the pole."]);
    expect(messages("primary-2", 11.2)).toEqual([
      "At pole P2 the primary of Power company is recorded above the top of the pole.",
    ]);
  });

  it("a neighbour below our usable space is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "attachment", "telephone-2", { heightM: 4 }), "outside-usable-space"),
    ).toEqual([]);
  });
});
