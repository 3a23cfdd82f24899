import { spanEnds } from "./geometry.ts";
import { defineQuery } from "./plant.ts";

/** The slope a span is strung on. */
export type StrandRise = {
  /** The far pole's end over the first pole's, m; negative where it is lower. */
  readonly riseM: number;
  /** False where nobody measured the ground at a pole, and the span is taken as level. */
  readonly isMeasured: boolean;
};

/**
 * Rise of a span for its tension and sag: that of the ground between its poles, as strand hangs at much the same height on both.
 *
 * Attachments are left out so that sag does not hang on the height of either, which lets the heights free on a pole be solved for
 * (core/jointpole). Over spans of 20 to 80 m that moves the sag by less than 3 mm where the attachments differ by 0.6 m on slopes up to a
 * tenth, less than 16 mm at 1.5 m and a fifth (tests/property/strandSlope.test.ts). The chord that clearance is measured from runs
 * through the attachments themselves.
 */
export const strandRise = defineQuery("strand-rise", (plant, spanId): StrandRise => {
  const { from, to } = spanEnds(plant, spanId);
  if (from.groundM === null || to.groundM === null) return { riseM: 0, isMeasured: false };
  return { riseM: to.groundM - from.groundM, isMeasured: true };
});
