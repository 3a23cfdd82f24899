import type { Basis } from "../rules/rule.ts";

/** How far a source was read, as the drawings say it. */
export const markWords: Readonly<Record<Basis["mark"], string>> = {
  seen: "seen",
  memory: "from memory, unverified",
  practice: "practice",
  computed: "computed",
};

/** Document, clause and edition of a source. */
export function placeWords({ document, clause, edition }: Basis): string {
  return [document, clause, edition].filter((one) => one !== "").join("; ");
}

/** The source of a limit as short as a cell of a table takes it: document, clause without its words, and mark. */
export function limitSource(basis: Basis): string {
  return `${placeWords({ ...basis, clause: basis.clause.split(":")[0] ?? "", edition: "" })}; ${markWords[basis.mark]}`;
}
