import { z } from "zod";
import { leastSeparation, separationAtM, type Wire } from "../strand/separation.ts";
import { stringingHorizontalN } from "../strand/stringing.ts";
import { figure, positive } from "./fields.ts";
import { pointLoadsField } from "./strandFields.ts";
import { defineTopic } from "./topic.ts";

const wire = z.strictObject({
  nearHeightM: figure("height at the near pole above a level that both wires share, m"),
  farHeightM: figure("height at the far pole above that level, m"),
  sagM: positive("midspan sag below the chord, m; this, or weightNPerM and horizontalN").optional(),
  weightNPerM: positive("load per length, N/m").optional(),
  horizontalN: positive("horizontal component of the tension, N").optional(),
  pointLoads: pointLoadsField,
});

export const separationTopic = defineTopic({
  id: "separation",
  title: "Least vertical separation of two wires over a span, each hanging in its own case",
  request: z.strictObject({
    spanM: positive("horizontal distance between the poles, m"),
    upper: wire,
    lower: wire,
  }),
  reply: z.strictObject({
    leastM: figure("least height of the upper wire above the lower, m; negative where they cross"),
    atM: figure("where that is, m from the near pole"),
    nearM: figure("at the near pole, m"),
    midspanM: figure("at midspan, m"),
    farM: figure("at the far pole, m"),
  }),
  example: {
    spanM: 45.72,
    upper: { nearHeightM: 8.5, farHeightM: 8.5, sagM: 0.9 },
    lower: { nearHeightM: 7.3, farHeightM: 7.3, weightNPerM: 2.948, horizontalN: 1684.8 },
  },
  answer({ spanM, ...given }) {
    const upper = hang("upper", spanM, given.upper);
    const lower = hang("lower", spanM, given.lower);
    return {
      ...leastSeparation(upper, lower),
      nearM: separationAtM(upper, lower, 0),
      midspanM: separationAtM(upper, lower, spanM / 2),
      farM: separationAtM(upper, lower, spanM),
    };
  },
});

/** A wire with its load and tension; one known by its sag alone hangs as any of that sag would. */
function hang(name: string, spanM: number, given: z.output<typeof wire>): Wire {
  const { nearHeightM, farHeightM, sagM, weightNPerM, horizontalN, pointLoads } = given;
  const supports = { spanM, nearHeightM, riseM: farHeightM - nearHeightM };
  const isLoaded = weightNPerM !== undefined && horizontalN !== undefined;
  if (isLoaded && sagM === undefined) return { ...supports, weightNPerM, horizontalN, pointLoads };
  if (sagM === undefined || weightNPerM !== undefined || horizontalN !== undefined || pointLoads !== undefined) {
    throw new RangeError(`${name} must have either sagM alone or weightNPerM and horizontalN`);
  }
  // a weight of 1 N/m along the level run; along the chord it is less
  const alongChordNPerM = spanM / Math.hypot(spanM, supports.riseM);
  return { ...supports, weightNPerM: alongChordNPerM, horizontalN: stringingHorizontalN(spanM, 1, sagM / spanM) };
}
