import { describe, expect, it } from "vitest";
import { attachmentRange } from "../../../core/jointpole/attachmentRange.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";

function rangeOf(route: Route, poleId = "pole-2") {
  const range = attachmentRange(openPlant(route), poleId);
  if (range.kind === "unknown") throw new Error(range.why);
  return range;
}

describe("where our strand may be attached on a joint pole", () => {
  it("is from 12 in over the telephone's cable, or the usable space, up to 30 in under the neutral", () => {
    const [only, ...others] = rangeOf(smallRoute()).free;
    expect(others).toEqual([]);
    expect(only).toMatchObject({
      toM: 8 - 0.762,
      to: { ruleId: "supply-separation-at-pole", against: { table: "attachment", id: "neutral-2" } },
    });
    const high = changed(smallRoute(), "attachment", "telephone-2", { heightM: 5.9 });
    expect(rangeOf(high).free[0]).toMatchObject({
      fromM: 5.9 + 0.3048,
      from: { ruleId: "communication-separation-at-pole", against: { table: "attachment", id: "telephone-2" } },
    });
  });

  it("lies both under and over a cable that goes no further than its pole", () => {
    let route = changed(smallRoute(), "attachment", "telephone-2", { heightM: 6.4 });
    for (const id of ["telephone-1", "telephone-3"]) route = without(route, "attachment", id);
    const { free } = rangeOf(route);
    expect(free.map(({ fromM, toM }) => [fromM, toM])).toEqual([
      [expect.any(Number), 6.4 - 0.3048],
      [6.4 + 0.3048, 8 - 0.762],
    ]);
  });

  it("is nothing where the neighbour's end alone is too near, and says that no height here mends it", () => {
    const route = changed(smallRoute(), "attachment", "strand-3", { heightM: 7.5 });
    const { free, barred } = rangeOf(route);
    expect(free).toEqual([]);
    expect(barred.filter(({ aboveM }) => aboveM === Number.NEGATIVE_INFINITY)).toContainEqual(
      expect.objectContaining({
        belowM: Number.POSITIVE_INFINITY,
        cause: expect.objectContaining({ ruleId: "supply-separation-in-span", spanId: "span-2" }),
      }),
    );
  });

  it("tells the case a road binds under and the row of the clearance set", () => {
    const route = changed(smallRoute(), "crossing", "crossing-1", { surfaceM: 101 });
    expect(rangeOf(route).free[0]?.from).toMatchObject({
      ruleId: "crossing-clearance",
      condition: expect.stringMatching(/^(hot|iced)$/),
      limit: { id: "limit-road", limitM: 4.7244 },
      spanId: "span-2",
    });
  });

  it("says what could not be looked at: unmeasured ground, the height of the pole", () => {
    let route = changed(smallRoute(), "pole", "pole-3", { groundM: null });
    route = changed(route, "pole", "pole-2", { aboveGroundM: null });
    expect(rangeOf(route).unchecked).toEqual([
      "Nobody measured the ground at pole P3.",
      "How high pole P2 stands is unknown.",
    ]);
  });

  it("names a terminal that hangs in the climbing space, which no height mends", () => {
    expect(rangeOf(smallRoute()).inClimbingSpace).toEqual([]);
    const route = changed(smallRoute(), "terminal", "terminal-1", { offsetM: 0.8 });
    expect(rangeOf(route).inClimbingSpace).toEqual(["terminal-1"]);
  });

  it("is known for a pole whose attachment nobody recorded", () => {
    const range = rangeOf(without(smallRoute(), "attachment", "strand-2"));
    expect(range.present).toEqual({ heightM: 5.6388, attachmentId: null });
    expect(range.free).toHaveLength(1);
  });

  it("cannot be told without strand of ours, or with several strands", () => {
    const bare = changed(smallRoute(), "span", "span-1", { strandSectionId: null });
    expect(attachmentRange(openPlant(bare), "pole-1")).toEqual({
      kind: "unknown",
      why: "Pole P1 carries no strand of ours.",
    });
    const strand = smallRoute().attachment.get("strand-2");
    const two = withRows(smallRoute(), "attachment", strand ? [{ ...strand, id: "strand-2b", heightM: 6.8 }] : []);
    expect(attachmentRange(openPlant(two), "pole-2")).toMatchObject({ kind: "unknown" });
  });
});
