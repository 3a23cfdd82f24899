import { z } from "zod";
import { figure, notNegative, positive } from "./fields.ts";

/** What a strand is made of. */
export const strandFields = {
  areaM2: positive("metallic area of the strand, m2"),
  modulusPa: positive("modulus of elasticity, Pa"),
  expansionPerC: notNegative("thermal expansion, 1/degC"),
};

/** What hangs at single places of a span. */
export const pointLoadsField = z
  .array(
    z.strictObject({
      atM: notNegative("horizontal distance from the near support, m, within the span"),
      weightN: notNegative("N"),
    }),
  )
  .describe("terminals, coils, workers; none where left out")
  .optional();

/** What hangs in a span and how warm it is. */
export const loadStateFields = {
  weightNPerM: positive("load per length, N/m"),
  temperatureC: figure("degC"),
};

/** The same for a kernel. */
export function strandOf(strand: {
  readonly areaM2: number;
  readonly modulusPa: number;
  readonly expansionPerC: number;
}) {
  return { axialStiffnessN: strand.areaM2 * strand.modulusPa, expansionPerDegC: strand.expansionPerC };
}
