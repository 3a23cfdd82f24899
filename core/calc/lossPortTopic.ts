import { z } from "zod";
import { differential, type LightBudget, type LightEvent, lightBudget, powerRange } from "../fiber/lightBudget.ts";
import { marginToMaxDb, marginToMinDb } from "../fiber/lossBudget.ts";
import { splitLossLimitDb, tapLossDb } from "../fiber/splitterLoss.ts";
import { figure, notNegative } from "./fields.ts";
import { bothWaysReply, classFields, powerFields, rangeReply } from "./lightFields.ts";
import { defineTopic } from "./topic.ts";

const segment = z.strictObject({
  what: z.string().describe("what the length is: fiber of the route with its sag and coils, drop"),
  lengthM: notNegative("m, slack included"),
  upDbPerKm: notNegative("at the wavelength of the way up, dB/km"),
  downDbPerKm: notNegative("at the wavelength of the way down, dB/km"),
});

const event = z.strictObject({
  what: z.string().describe("splices, connections, loss ahead of the route"),
  count: z.int().min(0),
  lossDb: notNegative("most that each loses, dB"),
  leastDb: notNegative("least that each loses, dB; lossDb where left out").optional(),
});

const splitter = z.strictObject({
  what: z.string(),
  legCount: z
    .int()
    .min(2)
    .describe("legs of a uniform splitter; its most is 0.8 + 3.4 log2 N where not told")
    .optional(),
  shareFrac: z.number().gt(0).lt(1).describe("share of the light an unequal tap sends this way").optional(),
  excessDb: notNegative("what the tap itself loses, dB").optional(),
  maxLossDb: notNegative("most it loses, dB, as its maker says").optional(),
  typicalLossDb: notNegative("loss to expect, dB; the most where left out").optional(),
});

const other = z.strictObject({
  leastUpDb: figure("dB"),
  mostUpDb: figure("dB"),
  leastDownDb: figure("dB"),
  mostDownDb: figure("dB"),
});

const classShape = z.strictObject(classFields);
const powerShape = z.strictObject(powerFields);

export const lossPortTopic = defineTopic({
  id: "loss-port",
  title: "Light of one port: every loss both ways, margins, power that arrives",
  request: z.strictObject({
    segments: z.array(segment),
    events: z.array(event),
    splitters: z
      .array(splitter)
      .describe("on the way from hub to unit: uniform ones and taps, in any number of stages"),
    marginDb: notNegative("kept for repair and ageing, dB; 0 where left out").optional(),
    opticalClass: classShape.optional(),
    powers: powerShape.optional(),
    others: z.array(other).describe("losses of the other units lit from the same hub output").optional(),
  }),
  reply: z.strictObject({
    terms: z.array(z.strictObject({ what: z.string(), least: bothWaysReply, most: bothWaysReply })),
    least: bothWaysReply,
    most: bothWaysReply.describe("without the repair margin"),
    lengthM: figure("fiber of all segments, m"),
    marginToMaxDb: figure("largest loss of the class less the larger way with the repair margin, dB").optional(),
    marginToMinDb: figure("smaller way less the least loss of the class, dB; negative: too much light").optional(),
    marginToReachM: figure("reach of the class less the fiber, m").optional(),
    differentialDb: figure("largest difference between any two units of the hub output, dB").optional(),
    marginToDifferentialDb: figure("difference the class allows less that, dB").optional(),
    atUnitDbm: rangeReply.describe("power that arrives at the unit").optional(),
    atHubDbm: rangeReply.describe("power that arrives at the hub").optional(),
    unitHeadroomDb: figure("least power at the unit, repair margin taken off, over what it needs, dB").optional(),
    unitOverloadDb: figure("most the unit bears less the most that arrives, dB; negative: overload").optional(),
    hubHeadroomDb: figure("least power at the hub, repair margin taken off, over what it needs, dB").optional(),
    hubOverloadDb: figure("most the hub bears less the most that arrives, dB; negative: overload").optional(),
  }),
  example: {
    segments: [{ what: "fiber", lengthM: 7650, upDbPerKm: 0.35, downDbPerKm: 0.28 }],
    events: [
      { what: "splices", count: 6, lossDb: 0.1 },
      { what: "connections", count: 4, lossDb: 0.3 },
    ],
    splitters: [
      { what: "1x4 at the hub", legCount: 4, maxLossDb: 7.3, typicalLossDb: 6.9 },
      { what: "1x8 in the terminal", legCount: 8, maxLossDb: 10.5, typicalLossDb: 10.1 },
    ],
    opticalClass: { minLossDb: 13, maxLossDb: 28, differentialDb: 15, reachM: 20000 },
    powers: {
      hubLaunch: { leastDbm: 1.5, mostDbm: 5 },
      unitReceive: { leastDbm: -27, mostDbm: -8 },
      unitLaunch: { leastDbm: 0.5, mostDbm: 5 },
      hubReceive: { leastDbm: -28, mostDbm: -8 },
    },
  },
  answer({ segments, events, splitters, marginDb = 0, opticalClass, powers, others }) {
    const budget = lightBudget(segments, [
      ...events.map(({ what, count, lossDb, leastDb }) => ({
        what,
        count,
        mostDb: lossDb,
        leastDb: leastDb ?? lossDb,
      })),
      ...splitters.map(splitterEvent),
    ]);
    const differenceDb = differential([budget, ...(others ?? []).map(lossesOf)])?.lossDb;
    return {
      ...budget,
      terms: [...budget.terms],
      ...(differenceDb === undefined ? {} : { differentialDb: differenceDb }),
      ...(opticalClass === undefined ? {} : againstClass(budget, marginDb, differenceDb, opticalClass)),
      ...(powers === undefined ? {} : arriving(budget, marginDb, powers)),
    };
  },
});

function lossesOf(one: z.infer<typeof other>): Pick<LightBudget, "least" | "most"> {
  return {
    least: { upDb: one.leastUpDb, downDb: one.leastDownDb },
    most: { upDb: one.mostUpDb, downDb: one.mostDownDb },
  };
}

function againstClass(
  { least, most, lengthM }: LightBudget,
  marginDb: number,
  differenceDb: number | undefined,
  opticalClass: z.infer<typeof classShape>,
) {
  const { minLossDb, maxLossDb, differentialDb: allowedDb, reachM } = opticalClass;
  return {
    marginToMaxDb: marginToMaxDb(Math.max(most.upDb, most.downDb) + marginDb, maxLossDb),
    marginToMinDb: marginToMinDb(Math.min(least.upDb, least.downDb), minLossDb),
    ...(reachM === undefined ? {} : { marginToReachM: reachM - lengthM }),
    ...(allowedDb === undefined || differenceDb === undefined
      ? {}
      : { marginToDifferentialDb: allowedDb - differenceDb }),
  };
}

function arriving({ least, most }: LightBudget, marginDb: number, powers: z.infer<typeof powerShape>) {
  const { hubLaunch, unitReceive, unitLaunch, hubReceive } = powers;
  const atUnitDbm = powerRange(hubLaunch, least.downDb, most.downDb);
  const down = {
    atUnitDbm,
    unitHeadroomDb: atUnitDbm.leastDbm - marginDb - unitReceive.leastDbm,
    unitOverloadDb: unitReceive.mostDbm - atUnitDbm.mostDbm,
  };
  if (unitLaunch === undefined || hubReceive === undefined) return down;
  const atHubDbm = powerRange(unitLaunch, least.upDb, most.upDb);
  return {
    ...down,
    atHubDbm,
    hubHeadroomDb: atHubDbm.leastDbm - marginDb - hubReceive.leastDbm,
    hubOverloadDb: hubReceive.mostDbm - atHubDbm.mostDbm,
  };
}

function splitterEvent({
  what,
  legCount,
  shareFrac,
  excessDb,
  maxLossDb,
  typicalLossDb,
}: z.infer<typeof splitter>): LightEvent {
  const kinds = [legCount, shareFrac].filter((one) => one !== undefined);
  if (kinds.length === 2) throw new RangeError(`${what} has legs or a share, not both`);
  const formulaDb =
    shareFrac !== undefined
      ? tapLossDb(shareFrac, excessDb ?? 0)
      : legCount !== undefined
        ? splitLossLimitDb(legCount)
        : undefined;
  const mostDb = maxLossDb ?? formulaDb;
  if (mostDb === undefined) throw new RangeError(`${what} needs its legs, its share or its loss`);
  return { what, count: 1, mostDb, leastDb: typicalLossDb ?? mostDb };
}
