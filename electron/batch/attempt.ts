import { type Result, refused } from "../../core/model/result.ts";
import { programFault } from "../host/faultLines.ts";
import type { Desk, Outcome, Verb } from "./verb.ts";

/** Runs a verb. A mistake of the program is a fault too: never exit code 1, which means findings. */
export async function attempt(verb: Verb, args: readonly string[], desk: Desk): Promise<Result<Outcome>> {
  try {
    return await verb.run(args, desk);
  } catch (error) {
    desk.say(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return refused(programFault(error, verb.name));
  }
}
