import { defineQuery, type Plant } from "../../plant/plant.ts";
import { spanBundle } from "../../plant/spanLoad.ts";
import { spanSag } from "../../plant/spanSag.ts";
import { strandRise } from "../../plant/strandRise.ts";
import { rowSpanIds } from "../../plant/strandRow.ts";
import { parabolicSagM } from "../../strand/parabola.ts";
import { returnWaveS } from "../../strand/returnWave.ts";
import { type RowSpan, slippingSpans } from "../../strand/slippingSpans.ts";
import { degCFromDegF } from "../../units/temperature.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";

/** Returns of the wave that a crew counts by stopwatch: enough that a tenth of a second hardly matters. */
export const returnCount = 10;

/** Temperatures a crew may meet, degC: round ones in its own units. */
export function crewTemperatures(system: UnitSystem): readonly number[] {
  return system === "us" ? [0, 20, 40, 60, 80, 100, 120].map(degCFromDegF) : [-20, -10, 0, 10, 20, 30, 40];
}

/** What the crew pulls a span to at one temperature: the level part of the tension, and midspan sag and wave at it. */
export type PulledSpan = { readonly horizontalN: number; readonly sagM: number; readonly returnsS: number };

/** The bare strand of a span at each temperature, and its sag when the cable is lashed; or why nobody can tell. */
type SpanStringing =
  | { readonly kind: "known"; readonly pulled: readonly PulledSpan[]; readonly finishedSagM: number }
  | { readonly kind: "unknown"; readonly why: string };

/**
 * Initial sag and tension of a span's bare strand, so that its finished line hangs as the checks of the route take it once the cables
 * are lashed: by itself where the strand is clamped at every pole, on one tension with its section where it slips. Creep is left out.
 */
export function spanStringing(plant: Plant, spanId: string): SpanStringing {
  const finished = spanSag(plant, spanId);
  if (finished.kind === "unknown") return finished;
  const { lengthM, strandSectionId } = plant.rowOf("span", spanId);
  const section = plant.rowOf("strandSection", strandSectionId ?? "");
  const [first = spanId] = rowSpanIds(plant, spanId, section);
  const tensionsN = bareTensions(plant, first);
  if (!tensionsN) return { kind: "unknown", why: `The tension of strand section ${section.name} did not settle.` };
  const slope = Math.hypot(lengthM, finished.riseM) / lengthM;
  const loadNPerM = plant.rowOf("strandType", section.strandTypeId).weightNPerM * slope;
  const pulled = tensionsN.map((horizontalN) => {
    const sagM = parabolicSagM(lengthM, loadNPerM, horizontalN);
    return { horizontalN, sagM, returnsS: returnWaveS(sagM, returnCount) };
  });
  return { kind: "known", pulled, finishedSagM: finished.stringing.sagM };
}

/** Level tension at each temperature of the bare strand in the row that a span begins, N; null where one did not settle. */
const bareTensions = defineQuery("bare-strand-tensions", (plant, firstSpanId): readonly number[] | null => {
  const { strandSectionId } = plant.rowOf("span", firstSpanId);
  const finished = spanSag(plant, firstSpanId);
  if (strandSectionId === null || finished.kind === "unknown") return null;
  const section = plant.rowOf("strandSection", strandSectionId);
  const strand = plant.rowOf("strandType", section.strandTypeId);
  const spans = rowSpanIds(plant, firstSpanId, section).flatMap((id): RowSpan[] => {
    const bundle = spanBundle(plant, id);
    if (!bundle) return [];
    const { riseM } = strandRise(plant, id);
    const [from, to] = [{ weightNPerM: bundle.weightNPerM }, { weightNPerM: strand.weightNPerM }];
    return [{ spanM: plant.rowOf("span", id).lengthM, riseM, from, to }];
  });
  const found: number[] = [];
  for (const toDegC of crewTemperatures(plant.settings().unitSystem)) {
    const state = slippingSpans({
      spans,
      axialStiffnessN: strand.areaM2 * strand.modulusPa,
      expansionPerDegC: strand.expansionPerC,
      horizontalN: finished.stringing.horizontalN,
      fromDegC: section.stringingDegC,
      toDegC,
    });
    if (!state.ok) return null;
    found.push(state.value.horizontalN);
  }
  return found;
});
