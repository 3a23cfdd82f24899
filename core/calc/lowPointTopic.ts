import { z } from "zod";
import { catenaryLowPoint, parabolicLowPoint } from "../strand/lowPoint.ts";
import { figure, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const lowPointTopic = defineTopic({
  id: "low-point",
  title: "Where a span between supports of unequal height is lowest",
  request: z.strictObject({
    spanM: positive("horizontal distance between the supports, m"),
    riseM: figure("height of the far support above the near one, m; negative where it is lower"),
    weightNPerM: positive("load per length, N/m"),
    horizontalN: positive("horizontal component of the tension, N"),
    method: z.enum(["catenary", "parabola"]),
  }),
  reply: z.strictObject({
    lowPointM: figure("from the lower support, m; negative where the curve would turn outside the span"),
    belowLowerM: figure("lowest place of the strand below the lower support, m; 0 where it turns outside the span"),
  }),
  example: { spanM: 45.72, riseM: 0.6096, weightNPerM: 2.948, horizontalN: 1684.8, method: "catenary" },
  answer: ({ method, ...span }) => (method === "catenary" ? catenaryLowPoint(span) : parabolicLowPoint(span)),
});
