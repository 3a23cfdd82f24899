import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { crossingClearance } from "../../../core/plant/clearance.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { poleTopM, profileAlong, profileOf, profileWith, stepAt } from "../../../core/plant/profile.ts";
import { placeOnProfile } from "../../../core/plant/profilePlace.ts";
import { spanSeparations } from "../../../core/plant/separation.ts";
import { spanClearance } from "../../../core/plant/spanClearance.ts";
import { spanSag, strandSagM } from "../../../core/plant/spanSag.ts";
import { stationClearance } from "../../../core/plant/stationClearance.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";

const underStrandM = 0.003175 + 0.0109;

function profile(route: Route = smallRoute()) {
  return profileOf(openPlant(route), "cable-1");
}

describe("the profile along a cable", () => {
  it("stands every pole at its station, with everybody's attachments upwards", () => {
    const { poles, lengthM } = profile();
    expect(poles.map((pole) => [pole.tag, pole.stationM])).toEqual([
      ["P1", 0],
      ["P2", 45],
      ["P3", 90],
      ["P4", 135],
    ]);
    expect(lengthM).toBe(135);
    expect(poles[1]?.attachments.map((one) => one.kind)).toEqual(["communication", "ourStrand", "neutral", "primary"]);
  });

  it("draws the line where the clearances are measured: at midspan lower by the sag of each case", () => {
    const plant = openPlant(smallRoute());
    const span = stepAt(profileOf(plant, "cable-1"), 60)?.span;
    const sag = spanSag(plant, "span-2");
    if (!span?.line || sag.kind === "unknown") throw new Error("the small route is strung");
    const middle = span.offsetsM.indexOf(22.5);
    for (const one of ["cold", "stringing", "hot", "iced"] as const)
      expect(span.line[one][middle]).toBeCloseTo(106.3 - strandSagM(45, sag[one], 22.5) - underStrandM, 9);
    expect(sag.cold.sagM).toBeLessThan(sag.stringing.sagM);
    expect(sag.stringing.sagM).toBeLessThan(sag.hot.sagM);
  });

  it("draws the wires of others by their measured sag, or by the company's assumed one and says so", () => {
    const measured = withRows(smallRoute(), "wireSag", [
      { id: "sag-1", spanId: "span-2", owner: "Power company", kind: "neutral", sagM: 0.6 },
    ]);
    const plant = openPlant(measured);
    const wires = profileOf(plant, "cable-1").steps[1]?.span.wires ?? [];
    const neutral = wires.find((one) => one.kind === "neutral");
    expect(neutral?.isSagAssumed).toBe(false);
    const middle = profileOf(plant, "cable-1").steps[1]?.span.offsetsM.indexOf(22.5) ?? 0;
    expect(neutral?.elevationsM[middle]).toBeCloseTo(108 - 0.6, 9);
    expect(wires.find((one) => one.kind === "primary")).toMatchObject({ isSagAssumed: true });
    const separations = spanSeparations(plant, "span-2");
    expect(separations.kind === "known" && separations.wires).toHaveLength(wires.length);
  });

  it("runs a span the other way where the cable does", () => {
    const turned = changed(smallRoute(), "cableRun", "run-2", { reversed: true });
    const shown = placeOnProfile(openPlant(turned), profile(turned), { table: "terminal", id: "terminal-1" });
    expect(shown?.stationM).toBeCloseTo(90 - 0.9144, 9);
  });

  it("says why a span has no line, and stands an unmeasured pole on its neighbour's ground", () => {
    const { poles, steps } = profile(changed(smallRoute(), "pole", "pole-2", { groundM: null }));
    expect(poles[1]).toMatchObject({ groundM: null, footM: 100 });
    expect(steps[0]?.span).toMatchObject({ line: null, ground: null });
    expect(steps[0]?.span.why).toContain("P2");
    expect(steps[2]?.span.line).not.toBeNull();
  });

  it("tops a pole of unknown height over its highest attachment, a bare one at a usual height", () => {
    const [first] = profile(changed(smallRoute(), "pole", "pole-1", { aboveGroundM: null })).poles;
    if (!first) throw new Error("the small route has poles");
    expect(poleTopM(first)).toBeCloseTo(100 + (first.attachments.at(-1)?.heightM ?? 0) + 0.6, 9);
    expect(poleTopM({ ...first, attachments: [] })).toBeCloseTo(106.6, 9);
    expect(poleTopM({ ...first, aboveGroundM: 11 })).toBe(111);
  });

  it("tells crossings by their surface and the largest clearance asked for there", () => {
    const plant = openPlant(smallRoute());
    const [crossing] = profileOf(plant, "cable-1").steps[1]?.span.crossings ?? [];
    expect(crossing).toMatchObject({ topM: 100 });
    expect(crossing?.limitM).toBe(plant.rowOf("clearanceLimit", "limit-road").limitM);
  });

  it("of a moved attachment changes the spans at its pole and no others", () => {
    const plant = openPlant(smallRoute());
    const before = profileOf(plant, "cable-1");
    const lowered = openPlant(changed(smallRoute(), "attachment", "strand-2", { heightM: 5.8 }));
    const after = profileWith(before, lowered, "pole-2");
    expect(after.steps[2]?.span).toBe(before.steps[2]?.span);
    expect(after.steps[0]?.span.line?.stringing.at(-1)).toBeCloseTo(105.8 - underStrandM, 9);
    expect(after.steps[1]?.span.line?.stringing[0]).toBeCloseTo(105.8 - underStrandM, 9);
    expect(after.poles[1]?.attachments[1]?.heightM).toBe(5.8);
  });
});

describe("the profile along strand without a cable", () => {
  const way = { table: "strandSection", id: "section-1" } as const;

  it("is empty where a cable is lashed all along", () => {
    expect(profileAlong(openPlant(smallRoute()), way).steps).toEqual([]);
  });

  it("shows the bare spans in the order of their poles, with the line in every case", () => {
    const bare = ["run-1", "run-2"].reduce((route, id) => without(route, "cableRun", id), smallRoute());
    const { poles, steps, lengthM } = profileAlong(openPlant(bare), way);
    expect(poles.map((pole) => [pole.tag, pole.stationM])).toEqual([
      ["P1", 0],
      ["P2", 45],
      ["P3", 90],
    ]);
    expect(lengthM).toBe(90);
    expect(steps.every(({ span }) => span.line !== null)).toBe(true);
  });

  it("puts pieces apart from each other one behind the other", () => {
    const bare = ["run-1", "run-3"].reduce((route, id) => without(route, "cableRun", id), smallRoute());
    const { poles } = profileAlong(openPlant(bare), way);
    expect(poles.map((pole) => [pole.tag, pole.stationM])).toEqual([
      ["P1", 0],
      ["P2", 45],
      ["P3", 45],
      ["P4", 90],
    ]);
  });
});

describe("the line over one station", () => {
  it("is the crossing's clearance where that is least, case by case", () => {
    const plant = openPlant(smallRoute());
    const clearance = crossingClearance(plant, "crossing-1");
    if (clearance.kind === "unknown") throw new Error("the small route is measured");
    for (const one of ["stringing", "hot", "iced"] as const) {
      const here = stationClearance(plant, "span-2", clearance.atByCaseM[one]);
      if (here.kind === "unknown") throw new Error("the small route is measured");
      expect(here.over).toEqual({ table: "crossing", id: "crossing-1" });
      expect(here.byCase.find(({ condition }) => condition === one)?.clearanceM).toBeCloseTo(clearance.byCase[one], 9);
    }
  });

  it("beside the crossing is held against what the ground asks for", () => {
    const here = stationClearance(openPlant(smallRoute()), "span-2", 5);
    expect(here).toMatchObject({ kind: "known", over: null, surfaceM: 100 });
  });

  it("over a roof is told from the roof", () => {
    const route = withRows(smallRoute(), "structure", [
      {
        id: "shed",
        spanId: "span-1",
        name: "Shed",
        kind: "building",
        offsetM: 20,
        lengthM: 4,
        besideM: 0,
        side: "left",
        heightM: 3,
        bottomM: null,
      },
    ]);
    expect(stationClearance(openPlant(route), "span-1", 21)).toMatchObject({
      over: { table: "structure", id: "shed" },
      surfaceM: 103,
    });
  });
});

describe("the least clearance of a span", () => {
  it("is the one with the least to spare, not the lowest", () => {
    const least = spanClearance(openPlant(smallRoute()), "span-2");
    expect(least?.over).toEqual({ table: "crossing", id: "crossing-1" });
    expect(spanClearance(openPlant(smallRoute()), "span-1")?.over).toEqual({ table: "span", id: "span-1" });
  });

  it("is nothing where nobody can tell", () => {
    const bare = changed(smallRoute(), "span", "span-2", { strandSectionId: null });
    expect(spanClearance(openPlant(bare), "span-2")).toBeNull();
  });
});
