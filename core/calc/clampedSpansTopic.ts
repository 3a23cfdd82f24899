import { z } from "zod";
import { clampedSpans } from "../strand/clampedSpans.ts";
import { loadedSagM } from "../strand/loadedSpan.ts";
import { figure, positive } from "./fields.ts";
import { loadStateFields, pointLoadsField, strandFields, strandOf } from "./strandFields.ts";
import { defineSearchTopic } from "./topic.ts";

export const clampedSpansTopic = defineSearchTopic({
  id: "clamped-spans",
  title: "A row of spans clamped at every pole: each span's tension by itself, and the pull that is left on each pole",
  request: z.strictObject({
    ...strandFields,
    from: z.strictObject(loadStateFields).describe("as strung"),
    to: z.strictObject(loadStateFields),
    spans: z
      .array(
        z.strictObject({
          spanM: positive("horizontal distance between the supports, m"),
          riseM: figure("height of the far support above the near one, m; 0 where left out").optional(),
          horizontalN: positive("horizontal component of the tension as strung, N"),
          pointLoads: pointLoadsField.describe("what hangs at single places in the new state; none where left out"),
        }),
      )
      .min(1)
      .describe("in the order of the line"),
  }),
  reply: z.strictObject({
    spans: z.array(
      z.strictObject({
        horizontalN: figure("horizontal component of the tension, N"),
        sagM: figure("vertical distance at midspan below the chord, m"),
      }),
    ),
    poleDifferencesN: z
      .array(figure("N"))
      .describe("at each pole between two spans, tension ahead less tension behind, N"),
  }),
  example: {
    areaM2: 2.27e-5,
    modulusPa: 1.655e11,
    expansionPerC: 1.152e-5,
    from: { weightNPerM: 2.948, temperatureC: 15.6 },
    to: { weightNPerM: 2.948, temperatureC: -18 },
    spans: [
      { spanM: 36, horizontalN: 1684.8 },
      { spanM: 54, horizontalN: 1684.8 },
    ],
  },
  answer({ from, to, spans, ...strand }) {
    const row = clampedSpans(
      spans.map(({ spanM, riseM, horizontalN, pointLoads }) => ({
        spanM,
        riseM,
        ...strandOf(strand),
        from: { weightNPerM: from.weightNPerM, temperatureDegC: from.temperatureC, horizontalN },
        to: { weightNPerM: to.weightNPerM, temperatureDegC: to.temperatureC, pointLoads },
      })),
    );
    if (!row.ok) return row;
    const { horizontalN, poleDifferenceN } = row.value;
    return {
      ok: true,
      value: {
        spans: horizontalN.map((tensionN, i) => {
          const { spanM = 0, riseM = 0, pointLoads } = spans[i] ?? {};
          const hung = { spanM, riseM, weightNPerM: to.weightNPerM, horizontalN: tensionN, pointLoads };
          return { horizontalN: tensionN, sagM: loadedSagM(hung, spanM / 2) };
        }),
        poleDifferencesN: [...poleDifferenceN],
      },
    };
  },
});
