import { type Doomed, removalOf } from "../../core/edits/cascade.ts";
import { countedKinds } from "../../core/edits/countedKinds.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { runCommand } from "../app/edits.ts";
import { type RefKey, splitRef } from "../app/ref.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { titleOf } from "../panels/words.ts";
import { lockedWords } from "./kinds.ts";
import { toolWords } from "./words.ts";

/** Rows that would go with the chosen ones, and how one says both. */
type Removal = { readonly rows: readonly Doomed[]; readonly chosenWords: string; readonly alsoWords: string };

/** What taking the chosen rows away would take with them. */
export function removalFor(plant: Plant, selection: readonly RefKey[]): Removal {
  const rows = selection.map(splitRef);
  const names = new Set<string>(selection);
  const whole = removalOf(plant, rows);
  const also = whole.ok ? whole.value.filter((row) => row.after === null && !names.has(`${row.table}/${row.id}`)) : [];
  const [only, ...more] = selection;
  const chosenWords = only !== undefined && more.length === 0 ? lowerFirst(titleOf(plant, only)) : countedKinds(rows);
  return { rows, chosenWords, alsoWords: countedKinds(also) };
}

/** Why the chosen rows cannot be taken away, or null where they can. */
export function removalBlocked(session: Session): string | null {
  const { selection, kinds } = session.view.getState();
  if (selection.length === 0) return "Nothing is chosen.";
  for (const ref of selection) {
    const locked = lockedWords(kinds, splitRef(ref).table);
    if (locked !== null) return locked;
  }
  return null;
}

/** The name of the removal, with what hangs on the chosen things counted by kind. */
export function removalName(session: Session): string {
  const open = session.store.get();
  const { selection } = session.view.getState();
  if (!open || selection.length === 0) return "Remove what is chosen";
  const { chosenWords, alsoWords } = removalFor(open.plant, selection);
  return alsoWords === "" ? `Remove ${chosenWords}` : `Remove ${chosenWords} with ${alsoWords}`;
}

/** Takes the chosen rows away with what hangs on them, as one edit, and offers the way back. */
export async function removeChosen(session: Session): Promise<void> {
  const { rows, chosenWords, alsoWords } = removalFor(openRouteOf(session).plant, session.view.getState().selection);
  const [only] = rows;
  const isOne = rows.length === 1 && only !== undefined;
  const view = { toast: toolWords.removed(chosenWords, alsoWords), selection: [] };
  await (isOne
    ? runCommand(session, "row.remove", only, { view })
    : runCommand(session, "rows.remove", { rows }, { view }));
}

function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
