import type { ReactNode } from "react";
import type { HistoryEntry } from "../../../core/contract/historyMethods.ts";
import { timeWords } from "../../start/words.ts";
import { historyWords } from "./words.ts";

/** One line of a history: what, who, when. */
export function EntryLine({ entry, children }: { readonly entry: HistoryEntry; readonly children?: ReactNode }) {
  return (
    <li className="entry">
      <span>{`${historyWords.kinds[entry.kind]}${entry.label}`}</span>
      <span className="quiet">{`${entry.author}, ${timeWords(entry.atIso)}`}</span>
      {children}
    </li>
  );
}
