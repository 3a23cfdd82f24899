import { ok } from "../../../core/model/result.ts";
import { gapWords } from "../../../core/placement/words.ts";
import { layOutRoute } from "../../host/layOutRoute.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { summaryLines, summaryOf } from "../../host/summary.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "layout", usage: "FILE.strand [--hub POLE_TAG]" };

/** Strings the line where there is none yet, then hangs terminals and gives out fibers and ports. */
export const layoutVerb: Verb = {
  ...shape,
  help: "Strings strand and cable where there are none, hangs terminals, gives out fibers and ports.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], { hub: { type: "string" } });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const laidOut = await layOutRoute(session, desk.runJob, { hubTag: values.hub ?? "" });
      if (!laidOut.ok) return laidOut;
      const summary = summaryOf(session);
      const { unserved, unstrung, cost, costBound } = laidOut.value;
      return ok({
        exitCode: 0,
        lines: [
          ...summaryLines(summary),
          `Terminals and drops at catalogue prices: ${cost.toFixed(2)}${costBound === null ? "" : `, ${gapWords(cost, costBound)}`}.`,
          ...unstrung.map(
            (one) => `Not strung: span ${one.fromTag} to ${one.toTag}, which no line reaches from the hub.`,
          ),
          ...unserved.map((one) => `Not served: ${one.address}: ${one.reason}`),
        ],
        json: { ...summary, cost, costBound, unstrung, unserved },
      });
    });
  },
};
