import { z } from "zod";
import { breakingFrac } from "../strand/breakingFrac.ts";
import { changeOfState } from "../strand/changeOfState.ts";
import { exactChangeOfState } from "../strand/exactChangeOfState.ts";
import { loadedCatenary } from "../strand/loadedCatenary.ts";
import { type LoadedSpan, loadedSagM } from "../strand/loadedSpan.ts";
import { supportPulls } from "../strand/supportPulls.ts";
import type { Answer } from "./answer.ts";
import { figure, positive } from "./fields.ts";
import { loadStateFields, pointLoadsField, strandFields, strandOf } from "./strandFields.ts";
import { defineSearchTopic } from "./topic.ts";

const loadState = { ...loadStateFields, pointLoads: pointLoadsField };

export const tensionChangeTopic = defineSearchTopic({
  id: "tension-change",
  title: "Tension and sag of a span after its load, its temperature or both have changed",
  request: z.strictObject({
    spanM: positive("horizontal distance between the supports, or the ruling span of a row, m"),
    riseM: figure("height of the far support above the near one, m; 0 where left out").optional(),
    ...strandFields,
    from: z.strictObject({ ...loadState, horizontalN: positive("horizontal component of the tension, N") }),
    to: z.strictObject(loadState),
    breakingN: positive("rated breaking strength of the strand, N").optional(),
    method: z.enum(["catenary", "parabola"]).describe("parabola where left out; catenary is exact").optional(),
  }),
  reply: z.strictObject({
    horizontalN: figure("horizontal component of the tension, N"),
    sagM: figure("vertical distance at midspan below the chord, m; in wind in the plane the strand hangs in"),
    supportTensionN: figure("larger of the two tensions at the supports, N"),
    breakingFrac: figure("that tension as part of the rated breaking strength").optional(),
  }),
  example: {
    spanM: 45.72,
    areaM2: 2.27e-5,
    modulusPa: 1.655e11,
    expansionPerC: 1.152e-5,
    from: { weightNPerM: 2.948, horizontalN: 1684.8, temperatureC: 15.6 },
    to: { weightNPerM: 2.948, temperatureC: 15.6, pointLoads: [{ atM: 0.9144, weightN: 66.7 }] },
    breakingN: 29580,
  },
  answer({ spanM, riseM = 0, from, to, breakingN, method, ...strand }) {
    const isExact = method === "catenary";
    const state = (isExact ? exactChangeOfState : changeOfState)({
      spanM,
      riseM,
      ...strandOf(strand),
      from: { ...from, temperatureDegC: from.temperatureC },
      to: { ...to, temperatureDegC: to.temperatureC },
    });
    if (!state.ok) return state;
    const { horizontalN } = state.value;
    const hung = { spanM, riseM, horizontalN, weightNPerM: to.weightNPerM, pointLoads: to.pointLoads };
    const shape = isExact ? exactShape(hung) : parabolicShape(hung);
    if (!shape.ok) return shape;
    const strength =
      breakingN === undefined ? {} : { breakingFrac: breakingFrac(shape.value.supportTensionN, breakingN) };
    return { ok: true, value: { horizontalN, ...shape.value, ...strength } };
  },
});

type Shape = { readonly sagM: number; readonly supportTensionN: number };

function parabolicShape(hung: LoadedSpan): Answer<Shape> {
  const { nearTensionN, farTensionN } = supportPulls(hung);
  const sagM = loadedSagM(hung, hung.spanM / 2);
  return { ok: true, value: { sagM, supportTensionN: Math.max(nearTensionN, farTensionN) } };
}

function exactShape(hung: LoadedSpan): Answer<Shape> {
  const exact = loadedCatenary(hung);
  if (!exact.ok) return exact;
  const { sagM, nearTensionN, farTensionN } = exact.value;
  return { ok: true, value: { sagM: sagM(hung.spanM / 2), supportTensionN: Math.max(nearTensionN, farTensionN) } };
}
