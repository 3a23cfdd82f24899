import { fail, type Result } from "../model/result.ts";

/**
 * The fault of a request about a row that is not there.
 *
 * @param thing  what it is called in the trade: "terminal", "span"
 */
export function missing<T>(thing: string, id: string): Result<T> {
  return fail(
    "missing-row",
    `There is no such ${thing}.`,
    id,
    "It may have been removed meanwhile: look at the present state and choose again.",
  );
}
