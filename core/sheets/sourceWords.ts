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
