import { describe, expect, it } from "vitest";
import { extremeLoadCase, windFactors } from "../../../core/plant/extremeWeather.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { strandSagM } from "../../../core/plant/spanSag.ts";
import { chosenCases, governingCase, stateIn } from "../../../core/plant/strength.ts";
import { changeOfState } from "../../../core/strand/changeOfState.ts";
import { lineLoad } from "../../../core/strand/lineLoad.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";

const plant = openPlant(extremeRoute());
const further = ["extremeWind", "extremeIce", "worker"] as const;

function hung(condition: (typeof further)[number], on = plant, spanId = "span-3") {
  const state = stateIn(on, spanId, condition);
  if (!state) throw new Error(`nobody can tell ${condition}`);
  return state;
}

describe("a route", () => {
  it("is checked under the further cases its settings ask for, and no others", () => {
    expect(chosenCases(openPlant(smallRoute()))).toEqual(["stringing", "hot", "iced", "loaded"]);
    expect(chosenCases(plant)).toEqual(["stringing", "hot", "iced", "loaded", ...further]);
    const windOnly = openPlant(extremeRoute({ extremeIceId: null, workerLoadN: 0 }));
    expect(stateIn(windOnly, "span-3", "extremeWind")).not.toBeNull();
    expect(stateIn(windOnly, "span-3", "extremeIce")).toBeNull();
    expect(stateIn(windOnly, "span-3", "worker")).toBeNull();
  });

  it("is governed by the case that uses most of what the set allows", () => {
    const governing = governingCase(plant, "span-3");
    const used = governing && governing.tensionN / governing.allowedN;
    for (const one of chosenCases(plant)) {
      const state = stateIn(plant, "span-3", one);
      const limitFrac = { stringing: 0.25, loaded: 0.6, extremeWind: 0.8, extremeIce: 0.8, worker: 0.6 }[String(one)];
      if (limitFrac) expect((state?.supportN ?? 0) / (limitFrac * 29580)).toBeLessThanOrEqual(used ?? 0);
    }
  });
});

describe("extreme wind on a span", () => {
  it("goes by the height of its strand at the higher pole and by its length", () => {
    expect(windFactors(plant, "span-3")).toMatchObject({ height: { factor: 1 }, span: { factor: 0.93 } });
    const high = openPlant(changed(extremeRoute(), "attachment", "strand-3", { heightM: 12 }));
    expect(windFactors(high, "span-3").height).toMatchObject({ factor: 1.1, isBeyond: false });
    const wide = openPlant(changed(extremeRoute(), "span", "span-3", { lengthM: 100 }));
    expect(windFactors(wide, "span-3").span.factor).toBe(0.86);
    const widest = openPlant(changed(extremeRoute(), "span", "span-3", { lengthM: 200 }));
    expect(windFactors(widest, "span-3").span).toMatchObject({ factor: 0.86, isBeyond: true });
  });

  it("pulls as the change of state from stringing to its load", () => {
    const load = extremeLoadCase(plant, "span-3", "extremeWind");
    if (!load) throw new Error("the route is checked under extreme wind");
    const strung = stateIn(plant, "span-3", "stringing");
    const settled = changeOfState({
      spanM: 45,
      axialStiffnessN: 0.0000227 * 165.5e9,
      expansionPerDegC: 0.0000115,
      from: { weightNPerM: strung?.alongNPerM ?? 0, temperatureDegC: 15.6, horizontalN: strung?.horizontalN ?? 0 },
      to: {
        weightNPerM: lineLoad(load).totalNPerM,
        temperatureDegC: 15.6,
        pointLoads: hung("extremeWind").pointLoads,
      },
    });
    if (!settled.ok) throw new Error(settled.fault.what);
    expect(hung("extremeWind").horizontalN).toBeCloseTo(settled.value.horizontalN, 6);
  });

  it("blows the strand out: straight down it hangs less than in the plane it is blown into", () => {
    for (const condition of ["extremeWind", "extremeIce"] as const) {
      const state = hung(condition);
      expect(strandSagM(45, state, 22.5)).toBeLessThan(state.sagM);
      expect(state.verticalNPerM).toBeLessThan(state.loadNPerM);
    }
  });
});

describe("a worker on the strand", () => {
  it("hangs at midspan, at the stringing temperature, beside terminals and coils", () => {
    const state = hung("worker");
    expect(state.temperatureDegC).toBe(15.6);
    expect(state.pointLoads).toContainEqual({ atM: 22.5, weightN: 890 });
    expect(state.supportN).toBeGreaterThan(stateIn(plant, "span-3", "hot")?.supportN ?? Number.NaN);
  });

  it("sits in one span of a row that slips, which gives way more than a span clamped by itself", () => {
    const slipping = openPlant(changed(extremeRoute(), "strandSection", "section-1", { atPoles: "slipping" }));
    const [clamped, slipped] = [hung("worker"), hung("worker", slipping)];
    expect(slipped.horizontalN).toBeLessThan(clamped.horizontalN);
    expect(slipped.sagM).toBeGreaterThan(clamped.sagM);
    expect(slipped.horizontalN).toBeGreaterThan(stateIn(slipping, "span-3", "stringing")?.horizontalN ?? Number.NaN);
  });
});
