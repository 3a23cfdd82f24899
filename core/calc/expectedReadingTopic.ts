import { z } from "zod";
import { powerRange } from "../fiber/lightBudget.ts";
import { figure, notNegative } from "./fields.ts";
import { rangeReply } from "./lightFields.ts";
import { defineTopic } from "./topic.ts";

export const expectedReadingTopic = defineTopic({
  id: "expected-reading",
  title: "What a meter is expected to show at a port, and how far a reading is from it",
  request: z.strictObject({
    launch: z.strictObject({
      leastDbm: figure("least power the hub launches at the wavelength measured, dBm"),
      mostDbm: figure("most, dBm"),
    }),
    leastLossDb: notNegative("least loss from the hub's output to the port, the meter's cord plugged in, dB"),
    mostLossDb: notNegative("largest such loss, dB"),
    meterDb: notNegative("uncertainty of the meter, dB; 0 where left out").optional(),
    readDbm: figure("reading, dBm").optional(),
  }),
  reply: z.strictObject({
    expected: rangeReply,
    offByDb: figure(
      "from the nearer end of the range, the meter's uncertainty allowed; under 0 too little light, 0 within it, dB",
    ).optional(),
  }),
  example: {
    launch: { leastDbm: 1.5, mostDbm: 5 },
    leastLossDb: 17.2,
    mostLossDb: 19.4,
    meterDb: 0.25,
    readDbm: -19.1,
  },
  answer({ launch, leastLossDb, mostLossDb, meterDb = 0, readDbm }) {
    if (mostLossDb < leastLossDb) throw new RangeError("mostLossDb must not be under leastLossDb");
    if (launch.mostDbm < launch.leastDbm) throw new RangeError("launch.mostDbm must not be under launch.leastDbm");
    const expected = powerRange(launch, leastLossDb, mostLossDb);
    if (readDbm === undefined) return { expected };
    const underDb = Math.min(0, readDbm - (expected.leastDbm - meterDb));
    const overDb = Math.max(0, readDbm - (expected.mostDbm + meterDb));
    return { expected, offByDb: underDb + overDb };
  },
});
