import { z } from "zod";
import { breakPlace } from "../closeout/breakPlace.ts";
import { matchTrace } from "../closeout/matchTrace.ts";
import { figure, positive } from "./fields.ts";
import { defineTopic } from "./topic.ts";
import { matchExample, matchFields, matchRuleOf } from "./traceFields.ts";

const deviation = (of: string) => figure(`one standard deviation for ${of}, m`);

export const breakPlaceTopic = defineTopic({
  id: "break-place",
  title: "Where a fiber that ends too early is broken, and how far off that may be",
  request: z.strictObject({
    ...matchFields,
    pulseWidthNs: positive("ns"),
    groupIndex: positive("the distances are by"),
    spacingM: positive("from one point of the curve to the next, m"),
  }),
  reply: z.strictObject({
    break: z
      .strictObject({
        fiberM: figure("fiber from its near end, m"),
        plusMinusM: figure("two standard deviations, all parts together, m"),
        scaleM: deviation("group index, and excess of fiber over sheath"),
        slackM: deviation("coils and openings since the landmark before it"),
        pulseM: deviation("the pulse's length"),
        spacingM: deviation("the spacing of points"),
        fromFiberM: figure("the landmark it is counted on from, m"),
      })
      .nullable()
      .describe("null where the fiber is not broken"),
  }),
  example: { ...matchExample, pulseWidthNs: 30, groupIndex: 1.468, spacingM: 0.64 },
  answer({ landmarks, events, pulseWidthNs, groupIndex, spacingM, ...asked }) {
    const rule = matchRuleOf(asked);
    const found = breakPlace(matchTrace(landmarks, events, rule), rule, { pulseWidthNs, groupIndex, spacingM });
    if (!found) return { break: null };
    const { fiberM, plusMinusM, parts, fromFiberM } = found;
    return { break: { fiberM, plusMinusM, ...parts, fromFiberM } };
  },
});
