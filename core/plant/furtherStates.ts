import type { FurtherCase, StrengthCase } from "../model/loadRows.ts";
import { lineLoad } from "../strand/lineLoad.ts";
import { type ExtremeCase, extremeLoadCase, extremeRow } from "./extremeWeather.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { spanBundle, spanPointLoads } from "./spanLoad.ts";
import { type HungState, hungState, spanSag } from "./spanSag.ts";
import { type SpanState, spanStates } from "./spanStates.ts";
import { type StateOfSpan, tensionUnderN } from "./strandRow.ts";

/** How a span hangs in the extreme wind of the route; null where it is not checked under one, or nobody can tell. */
export const inExtremeWind = defineQuery("in-extreme-wind", (plant, spanId) => hungIn(plant, spanId, "extremeWind"));

/** The same under the extreme ice and wind of the route. */
export const underExtremeIce = defineQuery("under-extreme-ice", (plant, spanId) => hungIn(plant, spanId, "extremeIce"));

/**
 * How a span hangs with a person on its strand at midspan, where it is pulled hardest; null where the settings count no person, or
 * nobody can tell.
 */
export const withWorker = defineQuery("with-worker", (plant, spanId) => hungIn(plant, spanId, "worker"));

/**
 * What hangs in each span of a row when one of them is asked about in a case.
 *
 * A worker sits at midspan of that one alone, in still air at the stringing temperature, terminals and coils beside.
 *
 * Tensions are those of slippingSpans; with 200 lb at midspan of 150 ft of 1/4 in strand they come out 0.16 % high against the elastic
 * catenary.
 *
 * @source worker: GO 95 49.7-B, C, seen: 200 lb on the messenger; where along the span and how warm: common practice, no source. Checked
 *   in tests/standards/extremeLoads.test.ts and pointLoads.test.ts
 */
export function stateInCase(plant: Plant, spanId: string, condition: Exclude<StrengthCase, "stringing">): StateOfSpan {
  switch (condition) {
    case "hot":
    case "iced":
      return (id) => spanStates(plant, id)?.[condition] ?? null;
    case "loaded":
      return (id) => spanStates(plant, id)?.tension ?? null;
    case "extremeWind":
    case "extremeIce":
      return (id) => weatherState(plant, id, condition);
    case "worker": {
      const { workerLoadN } = plant.settings();
      return (id) => (workerLoadN === 0 ? null : stillState(plant, id, id === spanId ? workerLoadN : 0));
    }
  }
}

function weatherState(plant: Plant, spanId: string, condition: ExtremeCase): SpanState | null {
  const row = extremeRow(plant, condition);
  const load = extremeLoadCase(plant, spanId, condition);
  if (!row || load === null) return null;
  const { totalNPerM, verticalNPerM } = lineLoad(load);
  const { temperatureDegC } = row;
  return { weightNPerM: totalNPerM, verticalNPerM, temperatureDegC, pointLoads: spanPointLoads(plant, spanId) };
}

function stillState(plant: Plant, spanId: string, workerLoadN: number): SpanState | null {
  const bundle = spanBundle(plant, spanId);
  const { strandSectionId, lengthM } = plant.rowOf("span", spanId);
  if (bundle === null || strandSectionId === null) return null;
  const hung = spanPointLoads(plant, spanId);
  const worker = { atM: lengthM / 2, weightN: workerLoadN };
  return {
    weightNPerM: bundle.weightNPerM,
    verticalNPerM: bundle.weightNPerM,
    temperatureDegC: plant.rowOf("strandSection", strandSectionId).stringingDegC,
    pointLoads: workerLoadN === 0 ? hung : [...hung, worker].sort((a, b) => a.atM - b.atM),
  };
}

function hungIn(plant: Plant, spanId: string, condition: FurtherCase): HungState | null {
  const stateOf = stateInCase(plant, spanId, condition);
  const state = stateOf(spanId);
  if (state === null) return null;
  const sag = spanSag(plant, spanId);
  const horizontalN = sag.kind === "unknown" ? null : tensionUnderN(plant, spanId, stateOf);
  if (sag.kind === "unknown" || horizontalN === null) return null;
  return hungState({ lengthM: sag.lengthM, riseM: sag.riseM, state, horizontalN });
}
