import { describe, expect, it } from "vitest";
import { explain } from "../../../core/explain/explain.ts";
import type { FigureRef } from "../../../core/explain/explanation.ts";
import { explanationText } from "../../../core/explain/explanationText.ts";
import type { Route } from "../../../core/model/route.ts";
import { blowOutM } from "../../../core/plant/blowOut.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { portLight } from "../../../core/plant/portLight.ts";
import { spanSag } from "../../../core/plant/spanSag.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { changed, withRows } from "../../fixtures/route/buildRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { withStructure } from "../../fixtures/route/oneMore.ts";
import { worked } from "./worked.ts";

const route = merged(changed(extremeRoute(), "crossing", "crossing-1", { surfaceM: 99.2 }));

/** With a barn beside span 1 and measured ground under it, and a road that the first drop passes over. */
function merged(bare: Route): Route {
  let full = changed(bare, "livingUnit", "unit-1", { groundM: 100 });
  full = withRows(full, "structure", [...withStructure({ besideM: 0.5, bottomM: 4 }).structure.values()]);
  full = withRows(full, "dropCrossing", [...faultyRoute("drop-clearance").dropCrossing.values()]);
  return withRows(full, "groundPoint", [{ id: "ground-1", spanId: "span-1", offsetM: 9, groundM: 101 }]);
}

function told(ref: FigureRef, on = route) {
  const told = explain(openPlant(on), ref, "us");
  if (told?.kind !== "known") throw new Error(told?.why ?? "its row is gone");
  return told;
}

const figures: readonly FigureRef[] = [
  { figure: "sag", id: "span-2", part: "stringing" },
  { figure: "sag", id: "span-2", part: "hot" },
  { figure: "sag", id: "span-2", part: "iced" },
  { figure: "tension", id: "span-2", part: "stringing" },
  { figure: "tension", id: "span-2", part: "hot" },
  { figure: "tension", id: "span-2", part: "iced" },
  ...(["loaded", "extremeWind", "extremeIce", "worker"] as const).flatMap((part): FigureRef[] => [
    { figure: "sag", id: "span-2", part },
    { figure: "tension", id: "span-2", part },
    { figure: "supportTension", id: "span-2", part },
  ]),
  ...(["loaded", "extremeWind", "extremeIce"] as const).map(
    (part): FigureRef => ({ figure: "load", id: "span-2", part }),
  ),
  { figure: "tensionShare", id: "span-2", part: "loaded" },
  { figure: "tensionShare", id: "span-2", part: "stringing" },
  { figure: "supportTension", id: "span-2", part: "iced" },
  { figure: "clearance", id: "crossing-1", part: "stringing" },
  { figure: "clearance", id: "crossing-1", part: "iced" },
  { figure: "groundClearance", id: "span-2", part: "hot" },
  { figure: "groundClearance", id: "span-1", part: "iced" },
  { figure: "structureClearance", id: "structure-1", part: "hot" },
  { figure: "undersideClearance", id: "structure-1", part: "stringing" },
  { figure: "structureBeside", id: "structure-1" },
  { figure: "dropClearance", id: "drop-1", dropCrossingId: "before-1", part: "iced" },
  { figure: "guyTension", id: "guy-1" },
  { figure: "poleSeparation", id: "neutral-2" },
  { figure: "spanSeparation", id: "span-2", wireId: "neutral-2" },
  { figure: "spanSeparation", id: "span-2", wireId: "telephone-2" },
  { figure: "lightUp", id: "drop-1" },
  { figure: "lightDown", id: "drop-1" },
  { figure: "dropRun", id: "drop-1" },
  { figure: "dropCut", id: "drop-1" },
  { figure: "terminalStation", id: "terminal-1" },
  { figure: "sheath", id: "cable-1" },
];

describe("a formula worked out again from its inputs gives the figure", () => {
  it.each(figures.map((ref) => [[ref.figure, "part" in ref ? ref.part : "", ref.id].join(" "), ref] as const))(
    "%s",
    (_, ref) => {
      const { formula, inputs, result } = told(ref);
      const again = worked(formula, inputs);
      expect(Math.abs(again - result.value)).toBeLessThan(1e-8 * Math.max(1, Math.abs(result.value)));
    },
  );

  it("over a surface nobody measured and under a cable that runs against its span", () => {
    const bare = changed(route, "crossing", "crossing-1", { surfaceM: null });
    const clearance = told({ figure: "clearance", id: "crossing-1", part: "hot" }, bare);
    expect(worked(clearance.formula, clearance.inputs)).toBeCloseTo(clearance.result.value, 9);
    expect(clearance.assumed.join(" ")).toContain("straight line between the ground");
    const turned = changed(route, "cableRun", "run-2", { reversed: true });
    const station = told({ figure: "terminalStation", id: "terminal-1" }, turned);
    expect(worked(station.formula, station.inputs)).toBeCloseTo(station.result.value, 9);
  });
});

describe("a figure of the steel", () => {
  const sloping = changed(changed(route, "pole", "pole-3", { groundM: 104 }), "pole", "pole-4", { groundM: null });
  const slipping = changed(changed(sloping, "strandSection", "section-1", { atPoles: "slipping" }), "span", "span-1", {
    lengthM: 30,
  });
  const statics = figures.filter(({ figure }) =>
    ["sag", "tension", "load", "supportTension", "clearance", "groundClearance", "structureClearance"].includes(figure),
  );

  it.each(statics.map((ref) => [[ref.figure, "part" in ref ? ref.part : ""].join(" "), ref] as const))(
    "on a slope, and where the strand slips at its poles: %s",
    (_, ref) => {
      for (const on of [sloping, slipping]) {
        const { formula, inputs, result } = told(ref, on);
        const again = worked(formula, inputs);
        expect(Math.abs(again - result.value)).toBeLessThan(1e-7 * Math.max(1, Math.abs(result.value)));
      }
    },
  );

  it("says how the strand is held, and on what slope", () => {
    const inclined = told({ figure: "tension", id: "span-2", part: "hot" }, sloping).assumed.join(" ");
    expect(inclined).toContain("clamped at both poles");
    expect(inclined).toContain("rises by 13 ft 1 in");
    const row = told({ figure: "tension", id: "span-2", part: "stringing" }, slipping);
    expect(row.inputs[0]?.name).toBe("weight of the ruling span 137 ft, of 3 spans");
    expect(row.assumed.join(" ")).toContain("its 3 spans from dead end to dead end pull alike");
    expect(told({ figure: "sag", id: "span-3", part: "hot" }, sloping).assumed.join(" ")).toContain("taken as level");
  });

  it("reads lengths in feet where inches are too many, and figures with the digits that count", () => {
    const far = told(
      { figure: "terminalStation", id: "terminal-1" },
      changed(route, "terminal", "terminal-1", { offsetM: 40 }),
    );
    expect(far.inputs.find(({ symbol }) => symbol === "x")?.text).toBe("131 ft 3 in");
    const { inputs } = told({ figure: "tension", id: "span-2", part: "hot" });
    expect(inputs.find(({ symbol }) => symbol === "E")?.text).toMatch(/^\d\.\d{3} lbf²$/);
  });
});

describe("an explanation", () => {
  it("gives the figure the plant gives, not one of its own", () => {
    const plant = openPlant(route);
    const sag = spanSag(plant, "span-2");
    const light = portLight(plant, "drop-1");
    if (sag.kind === "unknown" || light.kind === "unknown") throw new Error("the small route is incomplete");
    expect(told({ figure: "sag", id: "span-2", part: "iced" }).result.value).toBe(sag.iced.sagM);
    expect(told({ figure: "lightUp", id: "drop-1" }).result.value).toBe(light.upDb);
  });

  it("leads every input to a row that is there", () => {
    for (const ref of figures) {
      for (const { from, symbol } of told(ref).inputs) {
        if (from) expect(route[from.table].has(from.id), `${ref.figure} ${symbol}`).toBe(true);
      }
    }
  });

  it("says the limit with its document and how far it can be trusted", () => {
    const clearance = told({ figure: "clearance", id: "crossing-1", part: "iced" });
    const limit = route.clearanceLimit.get("limit-road");
    expect(clearance.limit?.value).toBe(limit?.limitM);
    expect(explanationText(clearance)).toContain(limit?.basisDocument);
  });

  it("says why nobody can tell", () => {
    const bare = changed(route, "span", "span-2", { strandSectionId: null });
    const none = explain(openPlant(bare), { figure: "sag", id: "span-2", part: "hot" }, "us");
    expect(none).toMatchObject({ kind: "unknown", why: "Span P2 to P3 carries no strand of ours." });
    expect(explain(openPlant(route), { figure: "sag", id: "gone", part: "hot" }, "us")).toBeNull();
  });

  it("copies as lines of text with the numbers put in", () => {
    const text = explanationText(told({ figure: "dropCut", id: "drop-1" }));
    expect(text.split("\n")[0]).toMatch(/^Drop to cut for 1 Test Rd: \d+ ft$/);
    expect(text).toMatch(/cut = d \+ a\ncut = [\d.]+ \+ 6\.096 = [\d.]+ m/);
  });
});

describe("an explanation of a clearance or a guy", () => {
  it("tells beside a structure how far each wind swings the strand, and why the limit is not held against that", () => {
    const swingM = blowOutM(openPlant(route), "span-1", 22.5, "extremeIce");
    const beside = told({ figure: "structureBeside", id: "structure-1" });
    expect(beside.result.value).toBe(0.5);
    expect(beside.limit?.value).toBe(route.clearanceLimit.get("limit-buildingBeside")?.limitM);
    expect(beside.assumed[0]).toContain("none of the documents at hand tells what must remain in wind");
    expect(beside.assumed.join(" ")).toContain(
      `swings out by ${formatLength(swingM ?? 0, "us", "height")} there under the load of Ice 20`,
    );
    expect(beside.assumed.filter((one) => one.startsWith("Wind: "))).toHaveLength(3);
  });

  it("holds a guy against the weaker of its strand and its anchor, and says where the anchor is unknown", () => {
    expect(told({ figure: "guyTension", id: "guy-1" }).limit?.value).toBeCloseTo(0.55 * 29580, 6);
    const weak = told({ figure: "guyTension", id: "guy-1" }, changed(route, "guy", "guy-1", { anchorN: 10000 }));
    expect(weak.limit?.words).toMatch(/^Largest pull on the anchor of the guy: 55 % of /);
    const unknown = changed(route, "guy", "guy-1", { anchorN: null });
    expect(told({ figure: "guyTension", id: "guy-1" }, unknown).assumed.join(" ")).toContain("what the anchor holds");
  });

  it("says why there is no ground to clear", () => {
    const covered = changed(route, "crossing", "crossing-1", { widthM: 90 });
    const none = explain(openPlant(covered), { figure: "groundClearance", id: "span-2", part: "hot" }, "us");
    expect(none).toMatchObject({ kind: "unknown", why: "Crossings leave no open ground under this span." });
  });
});
