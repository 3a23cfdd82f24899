import { describe, expect, it } from "vitest";
import { spanName } from "../../../core/plant/names.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { spanBundle } from "../../../core/plant/spanLoad.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { returnCount, spanStringing } from "../../../core/sheets/spanStringing.ts";
import { changeOfState } from "../../../core/strand/changeOfState.ts";
import { parabolicSagM } from "../../../core/strand/parabola.ts";
import { sagByReturnWaveM } from "../../../core/strand/returnWave.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

const route = smallRoute();
const plant = openPlant(route);
const span = [...route.span.values()].find((one) => one.strandSectionId !== null);
if (!span) throw new Error("no strung span");
const section = plant.rowOf("strandSection", span.strandSectionId ?? "");
const strand = plant.rowOf("strandType", section.strandTypeId);
const temperaturesDegC = [-15, 0, 20, 45];

const pulled = () => {
  const told = spanStringing(plant, span.id, temperaturesDegC);
  if (told.kind === "unknown") throw new Error(told.why);
  return told;
};

describe("a stringing table", () => {
  it("gives every temperature the tension that brings the lashed line to its finished sag", () => {
    const bundleNPerM = spanBundle(plant, span.id)?.weightNPerM ?? 0;
    expect(bundleNPerM).toBeGreaterThan(strand.weightNPerM);
    for (const [index, { horizontalN }] of pulled().pulled.entries()) {
      const lashed = changeOfState({
        spanM: span.lengthM,
        axialStiffnessN: strand.areaM2 * strand.modulusPa,
        expansionPerDegC: strand.expansionPerC,
        from: { weightNPerM: strand.weightNPerM, temperatureDegC: temperaturesDegC[index] ?? 0, horizontalN },
        to: { weightNPerM: bundleNPerM, temperatureDegC: section.stringingDegC },
      });
      if (!lashed.ok) throw new Error(lashed.fault.what);
      expect(parabolicSagM(span.lengthM, bundleNPerM, lashed.value.horizontalN)).toBeCloseTo(
        section.stringingSagFrac * span.lengthM,
        6,
      );
    }
  });

  it("is tauter and quicker in the cold, and the wave's time gives the sag back", () => {
    const cells = pulled().pulled;
    for (const [index, cell] of cells.entries()) {
      expect(sagByReturnWaveM(cell.returnsS, returnCount)).toBeCloseTo(cell.sagM, 9);
      const warmer = cells[index + 1];
      if (!warmer) continue;
      expect(cell.horizontalN).toBeGreaterThan(warmer.horizontalN);
      expect(cell.returnsS).toBeLessThan(warmer.returnsS);
    }
  });

  it("has a row for each strung span under its section, and says why a span has none", () => {
    const texts = (of: typeof route) =>
      composeSet(openPlant(of), [], { kinds: ["stringing"] }).sheets.flatMap(({ marks }) =>
        marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
      );
    for (const one of route.span.values()) {
      if (one.strandSectionId !== null) expect(texts(route)).toContain(spanName(plant, one.id));
    }
    expect(texts(route).some((text) => text.startsWith(`Section ${section.name}`))).toBe(true);
    const slack = changed(route, "strandSection", section.id, { stringingSagFrac: 0 });
    expect(texts(slack).filter((text) => text.endsWith(": no stringing sag")).length).toBeGreaterThan(0);
  });
});
