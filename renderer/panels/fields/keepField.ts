import { runCommand } from "../../app/edits.ts";
import type { Session } from "../../app/session.ts";
import { oneEdit, planCells } from "../../tables/cellEdits.ts";
import type { Column, Given } from "../../tables/columns/column.ts";
import { fieldWords } from "./words.ts";

/** Writes one text into a field of one row or many, as one edit; answers with why not, or null where it was kept. */
export async function keepField(
  session: Session,
  given: Given,
  { column, rowIds, text }: { readonly column: Column; readonly rowIds: readonly string[]; readonly text: string },
): Promise<string | null> {
  const plan = planCells(
    given,
    rowIds.map((rowId) => ({ rowId, column, text })),
  );
  const [bad] = plan.bad;
  if (bad) return bad.reason;
  const edit = oneEdit(plan.steps, fieldWords.changeRows(column.heading, rowIds.length));
  if (edit === null) return null;
  return (await runCommand(session, edit.command, edit.input)) ? null : fieldWords.noLonger;
}

/** Why a text cannot stand in a field, as one types; null where it can. */
export function whyNot(given: Given, column: Column, rowIds: readonly string[], text: string): string | null {
  const [first] = rowIds;
  if (first === undefined || !column.write) return null;
  const reading = column.write.read(text, given, first);
  return reading.ok ? null : reading.what;
}

/** A word of caution about a text that may stand all the same; null where there is none. */
export function cautionOf(given: Given, column: Column, rowIds: readonly string[], text: string): string | null {
  const [first] = rowIds;
  if (first === undefined || !column.write) return null;
  const reading = column.write.read(text, given, first);
  return reading.ok ? column.write.warn(given.plant, first, reading.value) : null;
}
