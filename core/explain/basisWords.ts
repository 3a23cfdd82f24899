import type { Basis } from "../rules/rule.ts";

const markWords = {
  seen: "read in the document",
  memory: "unverified: from memory, not re-read",
  practice: "practice, no published source",
  computed: "worked out here",
} as const;

/** Where a limit comes from and how far it can be trusted, in words. */
export function basisWords({ document, clause, edition, mark }: Basis): string {
  const where = [document, clause, edition].filter(Boolean).join(", ");
  return where === "" ? markWords[mark] : `${where}; ${markWords[mark]}`;
}
