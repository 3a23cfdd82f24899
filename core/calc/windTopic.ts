import { z } from "zod";
import { windPressurePa } from "../strand/windPressure.ts";
import { figure, notNegative } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const windTopic = defineTopic({
  id: "wind",
  title: "Pressure of extreme wind on a wire from its gust",
  request: z.strictObject({
    gustMPerS: notNegative("3 s gust 10 m above ground, m/s"),
    heightFactor: notNegative("kz, for the height above ground"),
    spanFactor: notNegative("GRF, for the length of the span"),
    shapeFactor: notNegative("Cf; 1 for round wire, and where left out").optional(),
    importanceFactor: notNegative("I; 1 where left out").optional(),
  }),
  reply: z.strictObject({ windPa: figure("Pa, as the topic load takes it") }),
  example: { gustMPerS: 40.2336, heightFactor: 1, spanFactor: 0.93 },
  answer: ({ shapeFactor = 1, importanceFactor = 1, ...gust }) => ({
    windPa: windPressurePa({ ...gust, shapeFactor, importanceFactor }),
  }),
});
