import { z } from "zod";
import { layerNamesWords } from "./layerNames.ts";
import { lineWeightsMm } from "./lineWeights.ts";
import { logoWords } from "./logoRef.ts";

/** Columns of the settings: how a company's drawings look. */
export const drawingStyle = {
  /** Strand, cable, what hangs on them, drops. */
  newLineMm: z.enum(lineWeightsMm.newLineMm),
  /** Poles, other parties' wires, crossings, ground, houses. */
  existingLineMm: z.enum(lineWeightsMm.existingLineMm),
  dimensionLineMm: z.enum(lineWeightsMm.dimensionLineMm),
  /** Findings and clouds of revisions. */
  markLineMm: z.enum(lineWeightsMm.markLineMm),
  /** Border, title block, tables. */
  frameLineMm: z.enum(lineWeightsMm.frameLineMm),
  layerNames: layerNamesWords,
  logo: logoWords,
};
