import { describe, expect, it } from "vitest";
import { without, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { withOnPole } from "../../fixtures/route/oneMore.ts";

const second = (heightM: number) => {
  const route = faultyRoute("riser-bracket-too-low");
  const light = route.attachment.get("light-2");
  if (!light) throw new Error("no bracket");
  return withRows(route, "attachment", [{ ...light, id: "light-3", heightM }]);
};

describe("riser-bracket-too-low", () => {
  it("a lowest bracket 1.5 m over the ground is found, once", () => {
    const message = "The lowest riser bracket of Power company on pole P2 is too near the ground";
    expect(findingsOf(faultyRoute("riser-bracket-too-low"), "riser-bracket-too-low")).toMatchObject([
      { message: `${message}.`, measured: 1.5, limit: 2.4384 },
    ]);
    expect(findingsOf(second(3), "riser-bracket-too-low")).toMatchObject([
      { message: `${message}, and the next one too near it.` },
    ]);
  });

  it("brackets from 8 ft on, or 8 ft between the two lowest, are quiet", () => {
    expect(findingsOf(withOnPole({ kind: "riser", heightM: 2.4384 }), "riser-bracket-too-low")).toEqual([]);
    expect(findingsOf(second(1.5 + 2.4384), "riser-bracket-too-low")).toEqual([]);
  });

  it("a set without such a limit is quiet", () => {
    const route = without(faultyRoute("riser-bracket-too-low"), "clearanceLimit", "limit-riserBracket");
    expect(findingsOf(route, "riser-bracket-too-low")).toEqual([]);
  });
});
