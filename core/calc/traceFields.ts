import { z } from "zod";
import type { MatchRule } from "../closeout/matchTrace.ts";
import { figure, notNegative, positive } from "./fields.ts";

/** What a trace is matched by: the fiber as drawn, what the instrument shows, and how far the two may lie apart. */
export const matchFields = {
  landmarks: z
    .array(
      z.strictObject({
        name: z.string().describe("what the reply calls it"),
        kind: z.enum(["connection", "splice", "tap", "splitter", "end"]),
        fiberM: notNegative("fiber from the end the light is sent in at, m; in order"),
        lossDb: notNegative("loss drawn for it, dB"),
      }),
    )
    .min(2)
    .describe("both ends and what lies between"),
  events: z
    .array(
      z.strictObject({
        atM: notNegative("from the instrument, m; in order"),
        lossDb: figure("dB; negative where the trace rises"),
        reflects: z.boolean(),
        ends: z.boolean().describe("the instrument takes it for the end of the fiber"),
      }),
    )
    .describe("as `calc trace` reads them from a file"),
  leadM: notNegative("length of the launch lead, m; found by itself where left out").optional(),
  slackM: positive("one standard deviation of a distance that does not grow with it, m"),
  scaleFrac: positive("and of the share it grows by"),
};

type Asked = { readonly leadM?: number | undefined; readonly slackM: number; readonly scaleFrac: number };

export function matchRuleOf({ leadM, slackM, scaleFrac }: Asked): MatchRule {
  return { leadM: leadM ?? null, slackM, scaleFrac };
}

/** A fiber with a splice, and its trace behind a lead of 150 m. */
export const matchExample = {
  landmarks: [
    { name: "hub", kind: "connection" as const, fiberM: 0, lossDb: 0.5 },
    { name: "closure S1", kind: "splice" as const, fiberM: 812, lossDb: 0.15 },
    { name: "terminal T9", kind: "splitter" as const, fiberM: 1530, lossDb: 10.2 },
  ],
  events: [
    { atM: 0, lossDb: 0, reflects: true, ends: false },
    { atM: 150, lossDb: 0.3, reflects: true, ends: false },
    { atM: 965, lossDb: 0.08, reflects: false, ends: false },
    { atM: 1341, lossDb: 20, reflects: false, ends: true },
  ],
  slackM: 6,
  scaleFrac: 0.01,
};
