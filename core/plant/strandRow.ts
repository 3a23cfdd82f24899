import type { StrandSection } from "../model/tables.ts";
import { rulingSpanM } from "../strand/rulingSpan.ts";
import { type RowSpan, rowMeans, rowStringingN, slippingSpans } from "../strand/slippingSpans.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { spanBundle } from "./spanLoad.ts";
import { type HungStateName, hungStates, type SpanState, type SpanStateName, spanStates } from "./spanStates.ts";
import { strandRise } from "./strandRise.ts";

/** Horizontal tension of a row of spans in each state, N, and how many spans share it. */
export type RowTensions = Readonly<Record<"stringing" | HungStateName, number>> & { readonly spanCount: number };

/** Spans that pull alike: all of a section whose strand slips at its poles, else one by itself, clamped at both. */
export function rowSpanIds(plant: Plant, spanId: string, { id, atPoles }: StrandSection): readonly string[] {
  return atPoles === "slipping" ? plant.where("span", "strandSectionId", id) : [spanId];
}

/** Horizontal tension of a span in each state; null where a search did not settle. */
export function spanTensions(plant: Plant, spanId: string, section: StrandSection): RowTensions | null {
  return section.atPoles === "slipping" ? sectionTensions(plant, section.id) : ownTensions(plant, spanId);
}

const sectionTensions = defineQuery("section-tensions", (plant, sectionId): RowTensions | null =>
  tensionsOf(plant, plant.rowOf("strandSection", sectionId), plant.where("span", "strandSectionId", sectionId)),
);

const ownTensions = defineQuery("own-tensions", (plant, spanId): RowTensions | null => {
  const { strandSectionId } = plant.rowOf("span", spanId);
  return strandSectionId === null ? null : tensionsOf(plant, plant.rowOf("strandSection", strandSectionId), [spanId]);
});

/** What hangs in each span of a row in a state; null where the span carries no strand. */
export type StateOfSpan = (spanId: string) => SpanState | null;

/** A span of a row from stringing, bare of terminals and coils, to a state. */
function rowSpan(plant: Plant, spanId: string, stateOf: StateOfSpan): readonly (RowSpan & { to: SpanState })[] {
  const bundle = spanBundle(plant, spanId);
  const to = stateOf(spanId);
  if (bundle === null || to === null) return [];
  const { lengthM } = plant.rowOf("span", spanId);
  const { riseM } = strandRise(plant, spanId);
  return [{ spanM: lengthM, riseM, from: { weightNPerM: bundle.weightNPerM }, to }];
}

function named(plant: Plant, name: SpanStateName): StateOfSpan {
  return (spanId) => spanStates(plant, spanId)?.[name] ?? null;
}

/** What the spans that pull alike with a span come to together in a state, and their ruling span; null without strand. */
export function rowTogether(plant: Plant, spanIds: readonly string[], stateOf: StateOfSpan) {
  const spans = spanIds.flatMap((id) => rowSpan(plant, id, stateOf));
  return spans.length === 0 ? null : { ...rowMeans(spans), rulingSpanM: rulingSpanM(spans.map((one) => one.spanM)) };
}

/** Horizontal tension of a span in one state, N; null without strand or where the search did not settle. */
export function tensionInN(plant: Plant, spanId: string, name: SpanStateName): number | null {
  return tensionUnderN(plant, spanId, named(plant, name));
}

/** Horizontal tension of a span where every span of its row hangs in a state of its own, N; null as for `tensionInN`. */
export function tensionUnderN(plant: Plant, spanId: string, stateOf: StateOfSpan): number | null {
  const { strandSectionId } = plant.rowOf("span", spanId);
  if (strandSectionId === null) return null;
  const section = plant.rowOf("strandSection", strandSectionId);
  return changedN(plant, section, [rowSpanIds(plant, spanId, section), stateOf]);
}

function tensionsOf(plant: Plant, section: StrandSection, spanIds: readonly string[]): RowTensions | null {
  const stringing = stringingN(plant, section, spanIds);
  const [cold, hot, iced, tension] = hungStates.map((name) => changedN(plant, section, [spanIds, named(plant, name)]));
  return cold && hot && iced && tension ? { stringing, cold, hot, iced, tension, spanCount: spanIds.length } : null;
}

function stringingN(plant: Plant, { stringingSagFrac }: StrandSection, spanIds: readonly string[]): number {
  return rowStringingN(
    spanIds.flatMap((id) => rowSpan(plant, id, named(plant, "hot"))),
    stringingSagFrac,
  );
}

function changedN(
  plant: Plant,
  section: StrandSection,
  [spanIds, stateOf]: readonly [spanIds: readonly string[], stateOf: StateOfSpan],
): number | null {
  const strand = plant.rowOf("strandType", section.strandTypeId);
  const spans = spanIds.flatMap((id) => rowSpan(plant, id, stateOf));
  const state = slippingSpans({
    spans,
    axialStiffnessN: strand.areaM2 * strand.modulusPa,
    expansionPerDegC: strand.expansionPerC,
    horizontalN: stringingN(plant, section, spanIds),
    fromDegC: section.stringingDegC,
    toDegC: spans[0]?.to.temperatureDegC ?? section.stringingDegC,
  });
  return state.ok ? state.value.horizontalN : null;
}
