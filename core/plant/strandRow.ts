import type { StrandSection } from "../model/tables.ts";
import { rulingSpanM } from "../strand/rulingSpan.ts";
import { type RowSpan, rowMeans, rowStringingN, slippingSpans } from "../strand/slippingSpans.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { spanBundle } from "./spanLoad.ts";
import { type HungStateName, hungStates, type SpanState, spanStates } from "./spanStates.ts";
import { strandRise } from "./strandRise.ts";

/** Horizontal tension of a row of spans in each state, N. */
export type RowTensions = Readonly<Record<"stringing" | HungStateName, number>>;

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

/** A span of a row from stringing, bare of terminals and coils, to a state. */
function rowSpan(plant: Plant, spanId: string, state: HungStateName): readonly (RowSpan & { to: SpanState })[] {
  const bundle = spanBundle(plant, spanId);
  const states = spanStates(plant, spanId);
  if (bundle === null || states === null) return [];
  const { lengthM } = plant.rowOf("span", spanId);
  const { riseM } = strandRise(plant, spanId);
  return [{ spanM: lengthM, riseM, from: { weightNPerM: bundle.weightNPerM }, to: states[state] }];
}

/** What the spans that pull alike with a span come to together in a state, and their ruling span; null without strand. */
export function rowTogether(plant: Plant, spanIds: readonly string[], state: HungStateName) {
  const spans = spanIds.flatMap((id) => rowSpan(plant, id, state));
  return spans.length === 0 ? null : { ...rowMeans(spans), rulingSpanM: rulingSpanM(spans.map((one) => one.spanM)) };
}

function tensionsOf(plant: Plant, section: StrandSection, spanIds: readonly string[]): RowTensions | null {
  const strand = plant.rowOf("strandType", section.strandTypeId);
  const rows = hungStates.map((state) => spanIds.flatMap((id) => rowSpan(plant, id, state)));
  const stringing = rowStringingN(rows[0] ?? [], section.stringingSagFrac);
  const found: number[] = [];
  for (const spans of rows) {
    const state = slippingSpans({
      spans,
      axialStiffnessN: strand.areaM2 * strand.modulusPa,
      expansionPerDegC: strand.expansionPerC,
      horizontalN: stringing,
      fromDegC: section.stringingDegC,
      toDegC: spans[0]?.to.temperatureDegC ?? section.stringingDegC,
    });
    if (!state.ok) return null;
    found.push(state.value.horizontalN);
  }
  const [cold = 0, hot = 0, iced = 0, tension = 0] = found;
  return { stringing, cold, hot, iced, tension };
}
