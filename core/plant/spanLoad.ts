import type { PointLoad } from "../strand/pointLoad.ts";
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

/**
 * What hangs at single places of a span: terminals by their model's weight, coils by the cable stored in them. What hangs past the
 * span's ends is left out, and closures, whose weight no catalogue tells.
 */
export const spanPointLoads = defineQuery("span-point-loads", (plant, spanId): readonly PointLoad[] => {
  const { lengthM } = plant.rowOf("span", spanId);
  const terminals = plant.where("terminal", "spanId", spanId).map((id): PointLoad => {
    const { offsetM, terminalModelId } = plant.rowOf("terminal", id);
    return { atM: offsetM, weightN: plant.rowOf("terminalModel", terminalModelId).weightN };
  });
  const coils = plant.where("slack", "spanId", spanId).map((id): PointLoad => {
    const { offsetM, storedM, cableId } = plant.rowOf("slack", id);
    const { weightNPerM } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
    return { atM: offsetM, weightN: storedM * weightNPerM };
  });
  return [...terminals, ...coils].filter(({ atM }) => atM >= 0 && atM <= lengthM).sort((a, b) => a.atM - b.atM);
});

/** Strand, cables and lashing of a span; null where the span has no strand. Terminals and coils are loads of their own. */
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
