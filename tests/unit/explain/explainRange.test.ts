import { describe, expect, it } from "vitest";
import { basisWords } from "../../../core/explain/basisWords.ts";
import { explainRange } from "../../../core/explain/explainRange.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

function told(route: Route, poleId = "pole-2", units: "us" | "metric" = "us") {
  const told = explainRange(openPlant(route), poleId, units);
  if (told.kind === "unknown") throw new Error(told.why);
  return told;
}

describe("the heights for our strand at a pole, explained", () => {
  it("are told as people read them, with where it is now", () => {
    expect(told(smallRoute())).toMatchObject({
      title: "Heights for our strand at pole P2",
      result: expect.stringMatching(/^18 ft \d+ in to 23 ft 8 in$/),
      present: "Attached at 20 ft 8 in: among them.",
      makeReady: { plans: [], why: null },
    });
    expect(told(smallRoute(), "pole-2", "metric").result).toMatch(/^5\.\d\d m to 7\.23 m$/);
  });

  it("name what sets each end, its figure and where that was read", () => {
    const { bounds } = told(smallRoute());
    const neutral = bounds.find((one) => one.from.id === "neutral-2" && one.setsAnEnd);
    expect(neutral).toMatchObject({
      ends: [{ end: "atMost", text: "at most 23 ft 8 in" }],
      reason: "to stay 30 in under the neutral of Power company, out of the communication worker safety zone",
    });
    expect(neutral && basisWords(neutral.basis)).toBe("test; practice, no published source");
  });

  it("tell of a road the case that asks most, once", () => {
    const road = told(smallRoute()).bounds.filter((one) => one.from.id === "crossing-1");
    expect(road).toHaveLength(1);
    expect(road[0]?.reason).toMatch(
      /^to clear Test Rd in span P2 to P3 by 15 ft 6 in (under ice|at the hot condition)$/,
    );
  });

  it("say that another cable leaves heights under it and over it", () => {
    const cable = told(smallRoute()).bounds.find(
      (one) => one.reason === "to keep 12 in from the communication of Telephone",
    );
    expect(cable?.ends.map((one) => one.text)).toEqual(["at most 16 ft 4 in", "at least 18 ft 5 in"]);
  });

  it("say that the usable space is the company's own setting", () => {
    const usable = told(smallRoute()).bounds.find((one) => one.reason.startsWith("to stay in the usable space"));
    expect(usable?.reason).toBe("to stay in the usable space, which starts at 18 ft 0 in");
    expect(usable?.basis.document).toBe("company setting");
  });

  it("tell what to move where there is no room, and why nothing is cheaper", () => {
    let route = changed(smallRoute(), "attachment", "neutral-2", { heightM: 7.0104 });
    route = changed(route, "attachment", "telephone-2", { heightM: 6.096 });
    const { result, present, makeReady, bounds } = told(route);
    expect(result).toBe("No height satisfies everything");
    expect(present).toBe("Attached at 20 ft 8 in: not among them.");
    expect(
      bounds
        .filter((one) => one.setsAnEnd)
        .map((one) => one.from.id)
        .sort(),
    ).toEqual(["neutral-2", "telephone-2"]);
    const [best] = makeReady.plans;
    expect(best?.says[0]).toMatch(/^Lower the communication of Telephone from 20 ft 0 in to 1\d ft \d+ in\.$/);
    expect(best?.says[1]).toMatch(/^Attach our strand at (20|19) ft \d+ in\.$/);
    expect(best?.total).toMatch(/^\d+ in$/);
    expect(makeReady.why).toMatch(
      /^Fewest attachments of others first, then the least distance in all; no other plan has as few\./,
    );
  });

  it("say that only the owner may move supply", () => {
    let route = changed(smallRoute(), "attachment", "neutral-2", { heightM: 7.0104 });
    route = changed(route, "settings", "settings", { usableFromM: 6.4 });
    expect(told(route).makeReady.plans[0]?.says[0]).toMatch(
      /^Raise the neutral of Power company from 23 ft 0 in to 23 ft \d+ in; only its owner may move it/,
    );
  });

  it("say first where the end at the other pole falls short by itself, which no height here mends", () => {
    const route = changed(smallRoute(), "attachment", "strand-3", { heightM: 7.5 });
    expect(told(route).bounds[0]).toMatchObject({
      ends: [],
      reason:
        "to stay 22.5 in under the neutral of Power company in span P2 to P3 as both sag: the end at the other pole falls short by itself",
    });
  });

  it("say what was not looked at", () => {
    const route = changed(smallRoute(), "pole", "pole-2", { aboveGroundM: null });
    expect(told(route).assumed).toContain("Not looked at: How high pole P2 stands is unknown.");
  });

  it("cannot be told for a pole without strand of ours", () => {
    const bare = changed(smallRoute(), "span", "span-1", { strandSectionId: null });
    expect(explainRange(openPlant(bare), "pole-1", "us")).toMatchObject({
      kind: "unknown",
      why: "Pole P1 carries no strand of ours.",
    });
  });
});
