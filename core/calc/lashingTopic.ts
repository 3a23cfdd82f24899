import { z } from "zod";
import { lashOn } from "../strand/lashing.ts";
import { loadedSagM } from "../strand/loadedSpan.ts";
import { figure, notNegative, positive } from "./fields.ts";
import { loadStateFields, pointLoadsField, strandFields, strandOf } from "./strandFields.ts";
import { defineSearchTopic } from "./topic.ts";

export const lashingTopic = defineSearchTopic({
  id: "lashing",
  title: "Stringing in stages: strand pulled by itself, then one cable after another lashed on",
  request: z.strictObject({
    spanM: positive("horizontal distance between the supports, m"),
    riseM: figure("height of the far support above the near one, m; 0 where left out").optional(),
    ...strandFields,
    pulled: z
      .strictObject({ ...loadStateFields, horizontalN: positive("horizontal component of the tension, N") })
      .describe("the strand by itself"),
    lashings: z
      .array(
        z.strictObject({
          addedNPerM: notNegative("cable and lashing wire, N/m"),
          temperatureC: figure("degC"),
          pointLoads: pointLoadsField.describe("all that hangs at single places from now on; as before where left out"),
        }),
      )
      .min(1)
      .describe("in the order of work"),
  }),
  reply: z.strictObject({
    stages: z.array(
      z.strictObject({
        weightNPerM: figure("what hangs now, N/m"),
        horizontalN: figure("horizontal component of the tension, N"),
        sagM: figure("vertical distance at midspan below the chord, m"),
      }),
    ),
  }),
  example: {
    spanM: 45.72,
    areaM2: 2.27e-5,
    modulusPa: 1.655e11,
    expansionPerC: 1.152e-5,
    pulled: { weightNPerM: 1.766, horizontalN: 1009.2, temperatureC: 15.6 },
    lashings: [{ addedNPerM: 1.182, temperatureC: 15.6 }],
  },
  answer({ spanM, riseM = 0, pulled, lashings, ...strand }) {
    const { weightNPerM, temperatureC: temperatureDegC, horizontalN } = pulled;
    const states = lashOn(
      { spanM, riseM, ...strandOf(strand), from: { weightNPerM, temperatureDegC, horizontalN } },
      lashings.map(({ temperatureC, ...lashing }) => ({ ...lashing, temperatureDegC: temperatureC })),
    );
    if (!states.ok) return states;
    const stages = states.value.map((state) => ({
      weightNPerM: state.weightNPerM,
      horizontalN: state.horizontalN,
      sagM: loadedSagM({ ...state, spanM, riseM }, spanM / 2),
    }));
    return { ok: true, value: { stages } };
  },
});
