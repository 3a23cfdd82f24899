import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { carriesStrand, partyOf, poleSeparation, spanSeparations } from "../../../core/plant/separation.ts";
import { spanSag } from "../../../core/plant/spanSag.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";

function wire(route: Route, spanId: string, party: string) {
  const separations = spanSeparations(openPlant(route), spanId);
  if (separations.kind === "unknown") throw new Error(separations.why);
  return separations.wires.find((one) => one.party === party);
}

const attachment = {
  id: "x",
  poleId: "pole-2",
  owner: "Power company",
  heightM: 8,
  voltageV: 0,
  note: "",
  bonded: false,
};

describe("whose wire it is", () => {
  it.each([
    ["primary", 7200, "supply"],
    ["secondary", 120, "supply"],
    ["equipment", 7200, "supply"],
    ["equipment", 0, null],
    ["neutral", 0, "neutral"],
    ["communication", 0, "communication"],
    ["ourStrand", 0, null],
    ["riser", 0, null],
  ] as const)("%s of %s V counts as %s", (kind, voltageV, party) => {
    expect(partyOf({ ...attachment, kind, voltageV })).toBe(party);
  });
});

describe("separation at the pole", () => {
  it("is how far the other's attachment is above our strand", () => {
    const separation = poleSeparation(openPlant(smallRoute()), "neutral-2");
    expect(separation).toMatchObject({ party: "neutral", ourAttachmentId: "strand-2" });
    expect(separation?.aboveM).toBeCloseTo(1.7, 9);
  });

  it("is negative for a wire below our strand", () => {
    expect(poleSeparation(openPlant(smallRoute()), "telephone-2")?.aboveM).toBeCloseTo(-1, 9);
  });

  it("is measured from the nearer of two strands of ours", () => {
    const high = { ...attachment, id: "strand-high", owner: "Us", kind: "ourStrand" as const, heightM: 7 };
    const plant = openPlant(withRows(smallRoute(), "attachment", [high]));
    expect(poleSeparation(plant, "neutral-2")).toMatchObject({ ourAttachmentId: "strand-high", aboveM: 1 });
    expect(poleSeparation(plant, "telephone-2")?.ourAttachmentId).toBe("strand-2");
  });

  it("is measured from the company's usual height where our attachment is not told", () => {
    const plant = openPlant(without(smallRoute(), "attachment", "strand-2"));
    expect(poleSeparation(plant, "neutral-2")).toEqual({
      party: "neutral",
      aboveM: 8 - 5.6388,
      ourAttachmentId: null,
    });
  });

  it("is nothing for our own strand, nor on a pole we do not use", () => {
    const plant = openPlant(changed(smallRoute(), "span", "span-1", { strandSectionId: null }));
    expect(poleSeparation(plant, "strand-1")).toBeNull();
    expect(poleSeparation(plant, "neutral-1")).toBeNull();
    expect([carriesStrand(plant, "pole-1"), carriesStrand(plant, "pole-2")]).toEqual([false, true]);
  });
});

describe("separation in the span", () => {
  it("stays what it is at the poles where both wires sag alike", () => {
    expect(wire(smallRoute(), "span-1", "neutral")?.leastM).toBeCloseTo(1.7, 9);
  });

  it("is least at midspan where the upper wire sags more", () => {
    const least = wire(smallRoute({ settings: { otherWireSagFrac: 0.02 } }), "span-1", "neutral");
    expect(least?.leastM).toBeCloseTo(1.7 - 0.45, 9);
    expect(least?.atOffsetM).toBeCloseTo(22.5, 9);
  });

  it("takes our strand at its largest sag over a wire below it", () => {
    const sag = spanSag(openPlant(smallRoute()), "span-1");
    if (sag.kind === "unknown") throw new Error(sag.why);
    const below = wire(smallRoute(), "span-1", "communication");
    expect(below?.weAreAbove).toBe(true);
    expect(below?.leastM).toBeCloseTo(1 - (sag.iced.sagM - 0.45), 9);
  });

  it("is negative where the wires cross", () => {
    expect(
      wire(changed(smallRoute(), "attachment", "neutral-2", { heightM: 6 }), "span-1", "neutral")?.leastM,
    ).toBeCloseTo(-0.3, 9);
  });

  it("pairs the lower of two wires with the lower one", () => {
    const second = (poleId: string, heightM: number) => ({
      ...attachment,
      id: `secondary-${poleId}`,
      kind: "neutral" as const,
      poleId,
      heightM,
    });
    const route = withRows(smallRoute(), "attachment", [second("pole-1", 7.5), second("pole-2", 7.5)]);
    const separations = spanSeparations(openPlant(route), "span-1");
    if (separations.kind === "unknown") throw new Error(separations.why);
    const neutrals = separations.wires.filter((one) => one.party === "neutral");
    expect(neutrals.map((one) => [one.fromAttachmentId, one.toAttachmentId])).toEqual([
      ["secondary-pole-1", "secondary-pole-2"],
      ["neutral-1", "neutral-2"],
    ]);
  });

  it("sees no wire where only one pole has it, and none between two tanks", () => {
    const tank = (n: number) => ({
      ...attachment,
      id: `tank-${n}`,
      kind: "equipment" as const,
      poleId: `pole-${n}`,
      voltageV: 7200,
    });
    const route = withRows(without(smallRoute(), "attachment", "neutral-2"), "attachment", [tank(1), tank(2)]);
    const separations = spanSeparations(openPlant(route), "span-1");
    expect(separations.kind === "known" && separations.wires.map((one) => one.fromAttachmentId)).toEqual([
      "telephone-1",
      "primary-1",
    ]);
  });

  it("is unknown where our sag is", () => {
    const route = changed(smallRoute(), "span", "span-1", { strandSectionId: null });
    expect(spanSeparations(openPlant(route), "span-1").kind).toBe("unknown");
  });
});
