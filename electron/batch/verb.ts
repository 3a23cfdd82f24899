import { type ParseArgsConfig, parseArgs } from "node:util";
import { fail, ok, type Result } from "../../core/model/result.ts";
import type { RunJob } from "../host/jobs.ts";
import { isMisread, misreadWords } from "../host/misread.ts";
import type { Stamp } from "../host/session.ts";

/** What a verb needs from outside. */
export type Desk = {
  readonly stamp: Stamp;
  readonly assetsFolder: string;
  readonly windowFolder: string;
  readonly runJob: RunJob;
  readonly readInput: () => Promise<string>;
  /** Says something at once, before the verb has ended. */
  readonly say: (line: string) => void;
};

/** How a verb ended: 0 good, 1 findings of severity error, 2 refused with more to tell than a fault holds. */
export type Outcome = { readonly exitCode: 0 | 1 | 2; readonly lines: readonly string[]; readonly json: unknown };

/** One thing that can be asked on the command line. */
export type Verb = {
  readonly name: string;
  /** Arguments as the help shows them. */
  readonly usage: string;
  readonly help: string;
  readonly run: (args: readonly string[], desk: Desk) => Promise<Result<Outcome>>;
};

type Options = NonNullable<ParseArgsConfig["options"]>;

/**
 * Reads a verb's arguments.
 *
 * @param names  what the plain arguments are called, in order; all are required
 */
export function readArguments<O extends Options>(
  verb: Pick<Verb, "name" | "usage">,
  args: readonly string[],
  names: readonly string[],
  options: O,
) {
  const mend = `Write: strandwright ${verb.name} ${verb.usage}`;
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    if (positionals.length !== names.length) {
      const words = names.length === 0 ? "takes no plain arguments" : `needs ${names.join(" and ")}`;
      return fail<never>("bad-arguments", `The verb ${verb.name} ${words}.`, positionals.join(" ") || verb.name, mend);
    }
    return ok({ values, positionals });
  } catch (error) {
    if (!isMisread(error)) throw error;
    return fail<never>("bad-arguments", misreadWords(error), verb.name, mend);
  }
}
