import { cablesInSpan } from "./cablePath.ts";
import { defineQuery } from "./plant.ts";

/** What hangs in a span from pole to pole. */
export type SpanBundle = {
  /** Diameter of the circle round strand and cables that ice and wind see, m: the sum of their diameters. */
  readonly diameterM: number;
  /** Strand, cables and lashing wire, N/m. */
  readonly weightNPerM: number;
  /** Lowest surface of the bundle below the strand's centre line, m. */
  readonly underStrandM: number;
};

/** Strand, cables and lashing of a span; null where the span has no strand. Terminals and coils are not in it. */
export const spanBundle = defineQuery("span-bundle", (plant, spanId): SpanBundle | null => {
  const { strandSectionId } = plant.rowOf("span", spanId);
  if (strandSectionId === null) return null;
  const strand = plant.rowOf("strandType", plant.rowOf("strandSection", strandSectionId).strandTypeId);
  const cables = cablesInSpan(plant, spanId).map((id) =>
    plant.rowOf("cableType", plant.rowOf("cable", id).cableTypeId),
  );
  const cableDiameterM = cables.reduce((sum, one) => sum + one.diameterM, 0);
  const cableNPerM = cables.reduce((sum, one) => sum + one.weightNPerM, 0);
  const lashingNPerM = cables.length > 0 ? plant.settings().lashingNPerM : 0;
  return {
    diameterM: strand.diameterM + cableDiameterM,
    weightNPerM: strand.weightNPerM + cableNPerM + lashingNPerM,
    underStrandM: strand.diameterM / 2 + cableDiameterM,
  };
});
