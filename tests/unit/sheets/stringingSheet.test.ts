import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { spanName } from "../../../core/plant/names.ts";
import { openPlant, type Plant } from "../../../core/plant/plant.ts";
import { spanBundle } from "../../../core/plant/spanLoad.ts";
import { spanSag } from "../../../core/plant/spanSag.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { crewTemperatures, returnCount, spanStringing } from "../../../core/sheets/schedule/spanStringing.ts";
import { changeOfState } from "../../../core/strand/changeOfState.ts";
import { sagByReturnWaveM } from "../../../core/strand/returnWave.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

const route = smallRoute();
const plant = openPlant(route);
const span = [...route.span.values()].find((one) => one.strandSectionId !== null);
if (!span) throw new Error("no strung span");
const section = plant.rowOf("strandSection", span.strandSectionId ?? "");
const strand = plant.rowOf("strandType", section.strandTypeId);
const temperaturesDegC = crewTemperatures("us");

const pulled = (of: Plant, spanId: string) => {
  const told = spanStringing(of, spanId);
  if (told.kind === "unknown") throw new Error(told.why);
  return told;
};
const textsOf = (of: Route) =>
  composeSet(openPlant(of), [], { kinds: ["stringing"] }).sheets.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
  );

describe("a stringing table", () => {
  it("gives every temperature the tension that brings the lashed line to its finished tension", () => {
    const bundleNPerM = spanBundle(plant, span.id)?.weightNPerM ?? 0;
    const finished = spanSag(plant, span.id);
    if (finished.kind === "unknown") throw new Error(finished.why);
    expect(bundleNPerM).toBeGreaterThan(strand.weightNPerM);
    const { riseM } = finished;
    const told = pulled(plant, span.id);
    expect(told.finishedSagM).toBeCloseTo(finished.stringing.sagM, 12);
    for (const [index, { horizontalN }] of told.pulled.entries()) {
      const lashed = changeOfState({
        spanM: span.lengthM,
        riseM,
        axialStiffnessN: strand.areaM2 * strand.modulusPa,
        expansionPerDegC: strand.expansionPerC,
        from: { weightNPerM: strand.weightNPerM, temperatureDegC: temperaturesDegC[index] ?? 0, horizontalN },
        to: { weightNPerM: bundleNPerM, temperatureDegC: section.stringingDegC },
      });
      if (!lashed.ok) throw new Error(lashed.fault.what);
      expect(lashed.value.horizontalN).toBeCloseTo(finished.stringing.horizontalN, 4);
    }
  });

  it("is tauter and quicker in the cold, and the wave's time gives the sag back", () => {
    const cells = pulled(plant, span.id).pulled;
    for (const [index, cell] of cells.entries()) {
      expect(sagByReturnWaveM(cell.returnsS, returnCount)).toBeCloseTo(cell.sagM, 9);
      const warmer = cells[index + 1];
      if (!warmer) continue;
      expect(cell.horizontalN).toBeGreaterThan(warmer.horizontalN);
      expect(cell.returnsS).toBeLessThan(warmer.returnsS);
    }
  });

  it("gives the spans of a section that slips at its poles one tension", () => {
    const slipping = openPlant(changed(route, "strandSection", section.id, { atPoles: "slipping" }));
    const spans = slipping.where("span", "strandSectionId", section.id);
    expect(spans.length).toBeGreaterThan(1);
    const tensions = spans.map((id) => pulled(slipping, id).pulled.map((one) => one.horizontalN));
    for (const one of tensions) expect(one).toEqual(tensions[0]);
    const own = spans.map((id) => pulled(plant, id).pulled[0]?.horizontalN);
    const lengths = new Set(spans.map((id) => plant.rowOf("span", id).lengthM));
    expect(new Set(own).size).toBe(lengths.size);
  });

  it("has a row for each strung span under its section, and says why a span has none", () => {
    for (const one of route.span.values()) {
      if (one.strandSectionId !== null) expect(textsOf(route)).toContain(spanName(plant, one.id));
    }
    expect(textsOf(route).some((text) => text.startsWith(`Section ${section.name}`))).toBe(true);
    const slack = changed(route, "strandSection", section.id, { stringingSagFrac: 0 });
    expect(textsOf(slack)).toContain(`Strand section ${section.name} has no stringing sag.`);
  });
});
