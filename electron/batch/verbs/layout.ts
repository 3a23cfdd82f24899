import { ok } from "../../../core/model/result.ts";
import { endingText } from "../../../core/plant/layoutWords.ts";
import { gapText } from "../../../core/units/gapText.ts";
import { moneyText } from "../../../core/units/moneyText.ts";
import { type LaidOut, layOutRoute } from "../../host/layOutRoute.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { summaryLines, summaryOf } from "../../host/summary.ts";
import { readLimits } from "../readLimits.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "layout", usage: "FILE.strand [--hub POLE_TAG] [--steps COUNT] [--seconds S]" };

/** Strings the line where there is none yet, then hangs terminals and gives out fibers and ports. */
export const layoutVerb: Verb = {
  ...shape,
  help: "Strings strand and cable where there are none, hangs terminals, gives out fibers and ports. Limited by steps, the answer is the same on every machine.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], { hub: text, steps: text, seconds: text });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const limits = readLimits(values);
    if (!limits.ok) return limits;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const wishes = { hubTag: values.hub ?? "", limits: limits.value };
      const laidOut = await layOutRoute(session, desk.runJob, wishes);
      if (!laidOut.ok) return laidOut;
      const summary = summaryOf(session);
      const { unserved, unstrung, cost, costBound, ended } = laidOut.value;
      return ok({
        exitCode: 0,
        lines: [
          ...summaryLines(summary),
          costLine(laidOut.value),
          ...unstrung.map(
            (one) => `Not strung: span ${one.fromTag} to ${one.toTag}, which no line reaches from the hub.`,
          ),
          ...unserved.map((one) => `Not served: ${one.address}: ${one.reason}`),
        ],
        json: { ...summary, cost, costBound, ended, unstrung, unserved },
      });
    });
  },
};

function costLine({ cost, costBound, ended }: LaidOut): string {
  const much = `Terminals and drops at catalogue prices: ${moneyText(cost)}`;
  if (costBound === null) return `${much}; ${endingText(ended)}`;
  return `${much}, bound ${moneyText(costBound)}: ${gapText(cost, costBound)}; ${endingText(ended)}`;
}
