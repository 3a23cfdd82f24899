import { z } from "zod";
import { lineLoad } from "../strand/lineLoad.ts";
import { figure, notNegative, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const loadTopic = defineTopic({
  id: "load",
  title: "Load per length of a strand bundle under ice and wind",
  request: z.strictObject({
    diameterM: positive("outside diameter that ice and wind see, m"),
    weightNPerM: notNegative("weight without ice, N/m"),
    iceM: notNegative("radial thickness of ice, m"),
    iceDensityKgPerM3: notNegative("density of the ice, kg/m3; 913 where left out").optional(),
    windPa: notNegative("wind pressure on the projected area, Pa"),
    constantNPerM: notNegative("additive constant of the loading district, N/m; 0 where there is none"),
  }),
  reply: z.strictObject({
    iceNPerM: figure("weight of the ice, N/m"),
    verticalNPerM: figure("weight with ice, N/m"),
    windNPerM: figure("wind on the iced diameter, N/m"),
    resultantNPerM: figure("root of the sum of the squares of vertical and wind, N/m"),
    totalNPerM: figure("resultant plus the constant, N/m; for tension only"),
    swingRad: figure("swing from the vertical, rad; atan(wind / vertical)"),
  }),
  example: { diameterM: 0.017272, weightNPerM: 2.948, iceM: 0.0127, windPa: 191.5, constantNPerM: 4.378 },
  answer: lineLoad,
});
