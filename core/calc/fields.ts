import { z } from "zod";

/** A finite number over 0; `meaning` says what it is and in which unit. */
export function positive(meaning: string): z.ZodNumber {
  return z.number().positive().describe(meaning);
}

/** A finite number, 0 or more. */
export function notNegative(meaning: string): z.ZodNumber {
  return z.number().nonnegative().describe(meaning);
}

/** A finite number of either sign. */
export function figure(meaning: string): z.ZodNumber {
  return z.number().describe(meaning);
}
