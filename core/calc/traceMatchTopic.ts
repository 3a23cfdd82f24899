import { z } from "zod";
import { matchTrace } from "../closeout/matchTrace.ts";
import { figure } from "./fields.ts";
import { defineTopic } from "./topic.ts";
import { matchExample, matchFields, matchRuleOf } from "./traceFields.ts";

const distance = figure("from the instrument, m");

export const traceMatchTopic = defineTopic({
  id: "trace-match",
  title: "Events of a reflectometer's trace, taken for the splices, connections and ends drawn along the fiber",
  request: z.strictObject(matchFields),
  reply: z.strictObject({
    leadM: figure("where the near end of the fiber is on the trace, m"),
    matches: z.array(
      z.strictObject({
        name: z.string(),
        atM: distance.nullable().describe("of its event, m; null for a near end that does not show"),
        moreM: figure("further than drawn from the match before it, m"),
      }),
    ),
    missing: z.array(z.string()).describe("should show and do not"),
    unmatched: z.array(distance).describe("events that stand for nothing drawn, m"),
    brokenAtM: distance.nullable().describe("where the fiber ends before its drawn end, m; null where it does not"),
    beyond: z.array(z.string()).describe("hidden by a break"),
  }),
  example: matchExample,
  answer({ landmarks, events, ...rule }) {
    const { leadM, matches, missing, unmatched, broken, beyond } = matchTrace(landmarks, events, matchRuleOf(rule));
    return {
      leadM,
      matches: matches.map(({ landmark, event, moreM }) => ({ name: landmark.name, atM: event?.atM ?? null, moreM })),
      missing: missing.map((one) => one.name),
      unmatched: unmatched.map((one) => one.atM),
      brokenAtM: broken?.atM ?? null,
      beyond: beyond.map((one) => one.name),
    };
  },
});
