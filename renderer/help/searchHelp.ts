import { crewCautions, sheetCaution, terminalCautions } from "../../core/sheets/cautions.ts";
import { glossary } from "./glossary.ts";
import { type HelpPage, helpPages } from "./pages.ts";
import { ruleBook } from "./ruleBook.ts";

/** Pages that hold every word sought, in their order. */
export function searchHelp(sought: string): readonly HelpPage[] {
  return helpPages.filter((page) => holds(textOf(page), sought));
}

/** Whether a text holds every word sought, whatever the case. */
export function holds(text: string, sought: string): boolean {
  const low = text.toLowerCase();
  return sought
    .toLowerCase()
    .split(/\s+/)
    .every((word) => low.includes(word));
}

function textOf({ title, about, says, shows }: HelpPage): string {
  return [title, about, ...says, ...shownText(shows)].join(" ");
}

function shownText(shows: HelpPage["shows"]): readonly string[] {
  switch (shows) {
    case "rules":
      return ruleBook().flatMap((one) => [one.title, one.compares, one.limitFrom]);
    case "glossary":
      return glossary.flatMap(({ term, meaning }) => [term, meaning]);
    case "cautions":
      return [sheetCaution, ...crewCautions.map((one) => one.text), ...terminalCautions];
    default:
      return [];
  }
}
