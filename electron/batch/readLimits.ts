import { fail, ok, type Result } from "../../core/model/result.ts";
import type { LimitWishes } from "../host/placementWatch.ts";

/** Limits of the search as they are asked for on the command line. */
export function readLimits(asked: {
  readonly steps?: string | undefined;
  readonly seconds?: string | undefined;
}): Result<LimitWishes> {
  for (const [name, text] of Object.entries(asked))
    if ((name === "steps" || name === "seconds") && text !== undefined && !(Number(text) > 0))
      return fail("bad-arguments", `That is no limit: ${text}.`, `--${name}`, "Give a number greater than nothing.");
  return ok({
    ...(asked.steps !== undefined && { stepLimit: Number(asked.steps) }),
    ...(asked.seconds !== undefined && { timeLimitS: Number(asked.seconds) }),
  });
}
