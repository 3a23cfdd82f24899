import { describe, expect, it } from "vitest";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("terminal-name-repeated", () => {
  it("a name that two terminals have is found", () => {
    expect(findingsOf(faultyRoute("terminal-name-repeated"), "terminal-name-repeated")).toMatchObject([
      { message: "More than one terminal has the name T1.", measured: 2 },
    ]);
  });

  it("terminals named one by one are quiet", () => {
    expect(findingsOf(smallRoute(), "terminal-name-repeated")).toEqual([]);
  });
});
