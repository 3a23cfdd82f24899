import { z } from "zod";
import { guyLoad } from "../strand/guyLoad.ts";
import { linePull } from "../strand/linePull.ts";
import { degFromRad, radFromDeg } from "../units/angle.ts";
import { figure, notNegative, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";

export const guyTopic = defineTopic({
  id: "guy",
  title:
    "Pull of a strand on a pole where it turns, changes tension or ends, and the load of guy and anchor against it",
  request: z.strictObject({
    behindN: notNegative("horizontal tension of the span the line comes from, N; 0 where the line begins"),
    aheadN: notNegative("horizontal tension of the span it goes on to, N; 0 at a dead end"),
    angleDeg: figure("how far the line turns at the pole, degrees; 0 straight on").min(0).max(180),
    heightM: positive("height of the strand at the pole above ground, m"),
    guyHeightM: positive("where the guy is fixed to the pole, m above ground; at the strand where left out").optional(),
    leadM: positive("horizontal distance from pole to anchor, m"),
  }),
  reply: z.strictObject({
    pullN: figure("level pull on the pole, N"),
    directionDeg: figure(
      "where to, degrees from the way the line came on, towards the side it turns to; the guy goes the opposite way",
    ),
    horizontalN: figure("level part of the guy's load, N"),
    guyN: figure("tension along the guy, borne by the anchor too, N"),
    verticalN: figure("what the guy presses the pole down and lifts the anchor with, N"),
    guySlopeDeg: figure("slope of the guy from the level, degrees"),
  }),
  example: { behindN: 26689, aheadN: 26689, angleDeg: 10, heightM: 7.3152, leadM: 4.8768 },
  answer({ behindN, aheadN, angleDeg, heightM, guyHeightM = heightM, leadM }) {
    const { pullN, directionRad } = linePull(behindN, aheadN, radFromDeg(angleDeg));
    const { slopeRad, ...guy } = guyLoad({ pulls: [{ pullN, heightM }], guyHeightM, leadM });
    return { pullN, directionDeg: degFromRad(directionRad), ...guy, guySlopeDeg: degFromRad(slopeRad) };
  },
});
