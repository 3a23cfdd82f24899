import { z } from "zod";
import { figure, notNegative, positive } from "./fields.ts";

/** A loss on both ways. */
export const bothWaysReply = z.strictObject({
  upDb: figure("unit to hub, dB"),
  downDb: figure("hub to unit, dB"),
});

/** Least and most of a power. */
export const rangeReply = z.strictObject({ leastDbm: figure("dBm"), mostDbm: figure("dBm") });

/** What an optical class asks. */
export const classFields = {
  minLossDb: notNegative("least loss the class allows, dB"),
  maxLossDb: positive("largest loss the class allows, dB"),
  differentialDb: notNegative("largest difference between two units of a hub output, dB").optional(),
  reachM: positive("longest fiber between hub and unit, m").optional(),
};

/** What sender and receiver at both ends can do; without the last two only the way down is told. */
export const powerFields = {
  hubLaunch: rangeReply,
  unitReceive: rangeReply.describe("least it needs and most it bears"),
  unitLaunch: rangeReply.optional(),
  hubReceive: rangeReply.describe("least it needs and most it bears").optional(),
};
