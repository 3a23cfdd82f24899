import { fail, type Result } from "../../core/model/result.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { nextLetter } from "../../core/sheets/revised/nextLetter.ts";
import { revisionsInOrder } from "../../core/sheets/revisions.ts";
import type { ReadDb } from "../../db/driver.ts";
import { lettersIssued } from "../../db/revisions.ts";
import type { Session } from "./session.ts";

/**
 * Refuses a revision under a letter that another was issued under, also where that one was taken back since: sheets with the letter may
 * be out, and two sets of one letter must never differ. Null where no letter is spent.
 */
export function refusedLetter(db: ReadDb, rows: readonly RowChange[]): Result<never> | null {
  const issued = rows.flatMap(({ table, before, after }) => (table === "revision" && !before && after ? [after] : []));
  if (issued.length === 0) return null;
  const known = lettersIssued(db);
  for (const row of issued) {
    if (!("letter" in row)) continue;
    const spent = known.find((one) => one.revisionId !== row.id && isSame(one.letter, row.letter));
    if (spent)
      return fail(
        "taken-letter",
        `A revision ${spent.letter} was issued and taken back: sheets may be out under that letter.`,
        `revision ${spent.letter}`,
        "Give this one the next letter, or redo the one taken back.",
      );
  }
  return null;
}

/** The letter after the last one that no revision was ever issued under. */
export function nextFreeLetter({ file, plant }: Session): string {
  const spent = lettersIssued(file.db);
  let letter = nextLetter(revisionsInOrder(plant).at(-1)?.letter);
  while (spent.some((one) => isSame(one.letter, letter))) letter = nextLetter(letter);
  return letter;
}

function isSame(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}
