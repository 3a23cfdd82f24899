import { z } from "zod";
import { loadedHeightM, loadedSagM } from "../strand/loadedSpan.ts";
import { lowestPlace } from "../strand/lowestPlace.ts";
import { supportPulls } from "../strand/supportPulls.ts";
import { degFromRad } from "../units/angle.ts";
import { figure, notNegative, positive } from "./fields.ts";
import { pointLoadsField } from "./strandFields.ts";
import { defineTopic } from "./topic.ts";

export const profileTopic = defineTopic({
  id: "profile",
  title: "Sag and height at any station of a span under its loads, and its pull on the two supports",
  request: z.strictObject({
    spanM: positive("horizontal distance between the supports, m"),
    nearHeightM: figure("height of the near support, m; 0 where left out").optional(),
    farHeightM: figure("height of the far support above the same level, m; 0 where left out").optional(),
    weightNPerM: positive("load per length, N/m; in wind the vertical load, with the tension of the whole load"),
    horizontalN: positive("horizontal component of the tension with all its loads, N"),
    pointLoads: pointLoadsField,
    stationsM: z.array(notNegative("m")).describe("horizontal distances from the near support, m, within the span"),
  }),
  reply: z.strictObject({
    stations: z.array(
      z.strictObject({
        atM: figure("m"),
        sagM: figure("vertical distance below the chord, m"),
        heightM: figure("m"),
      }),
    ),
    lowestAtM: figure("where the strand is lowest within the span, m from the near support"),
    lowestM: figure("its height there, m"),
    nearDownN: figure("what pulls the near support down, N; negative where the strand lifts it"),
    farDownN: figure("what pulls the far support down, N"),
    nearTensionN: figure("tension along the strand at the near support, N"),
    farTensionN: figure("tension along the strand at the far support, N"),
    nearSlopeDeg: figure("how steeply the strand leaves the near support, degrees, positive downward"),
    farSlopeDeg: figure("how steeply it leaves the far support, degrees, positive downward"),
  }),
  example: {
    spanM: 45.72,
    nearHeightM: 7.3,
    farHeightM: 7.6,
    weightNPerM: 2.948,
    horizontalN: 1760,
    pointLoads: [{ atM: 0.9144, weightN: 66.7 }],
    stationsM: [0.9144, 22.86],
  },
  answer({ nearHeightM = 0, farHeightM = 0, stationsM, ...given }) {
    const span = { ...given, riseM: farHeightM - nearHeightM };
    const { nearSlopeRad, farSlopeRad, ...pulls } = supportPulls(span);
    const lowest = lowestPlace(span);
    return {
      stations: stationsM.map((atM) => ({
        atM,
        sagM: loadedSagM(span, atM),
        heightM: nearHeightM + loadedHeightM(span, atM),
      })),
      lowestAtM: lowest.atM,
      lowestM: nearHeightM + lowest.heightM,
      ...pulls,
      nearSlopeDeg: degFromRad(nearSlopeRad),
      farSlopeDeg: degFromRad(farSlopeRad),
    };
  },
});
