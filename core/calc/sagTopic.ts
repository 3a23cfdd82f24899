import { z } from "zod";
import { catenarySpan } from "../strand/catenary.ts";
import { parabolicSpan } from "../strand/parabola.ts";
import { figure, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const sagTopic = defineTopic({
  id: "sag",
  title: "How one span hangs at a known horizontal tension",
  request: z.strictObject({
    spanM: positive("horizontal distance between the supports, m"),
    riseM: figure("height of the far support above the near one, m; 0 where left out").optional(),
    weightNPerM: positive("load per length, N/m"),
    horizontalN: positive("horizontal component of the tension, N"),
    method: z.enum(["catenary", "parabola"]),
  }),
  reply: z.strictObject({
    sagM: figure("vertical distance at midspan below the chord, m"),
    lengthM: figure("length along the strand, m"),
    lowPointM: figure("low point from the lower support, m; negative or past the span where it is outside"),
    supportTensionN: figure("tension at the upper support, the largest in the span, N"),
  }),
  example: { spanM: 45.72, riseM: 0, weightNPerM: 2.948, horizontalN: 1684.8, method: "catenary" },
  answer({ method, riseM, ...span }) {
    const hanging = { ...span, riseM: riseM ?? 0 };
    return method === "catenary" ? catenarySpan(hanging) : parabolicSpan(hanging);
  },
});
