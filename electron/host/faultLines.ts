import type { Fault } from "../../core/model/result.ts";

/** A fault as lines of words: what is wrong, where, how to mend it. */
export function faultLines({ what, where, mend }: Fault): string[] {
  return [what, `  Where: ${where}`, `  What to do: ${mend}`];
}

/** A mistake of the program as a fault, so that a person is told in words whatever happens. */
export function programFault(error: unknown, where: string): Fault {
  const words = error instanceof Error ? error.message : String(error);
  const mend = "The route file holds what was finished before. Try again; tell the program's makers if it stays.";
  return { code: "program-error", what: `The program made a mistake: ${words}.`, where, mend };
}
