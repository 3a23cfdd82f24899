import type { Severity } from "../../../core/rules/rule.ts";

/** Words of the findings panel. */
export const findingsWords = {
  title: "Findings",
  list: "Findings in the order chosen",
  unfold: "Unfold the findings",
  fold: "Fold the findings",
  none: "The rules found nothing. They check this route after every edit.",
  nothingToCheck: "Nothing is on this route yet, so there is nothing to check.",
  filtered: "All findings are filtered out by the counts or the text above.",
  showAll: "Show all findings",
  filter: "Filter by text",
  group: "Group by",
  groups: { severity: "severity", rule: "rule", place: "place", nothing: "nothing" },
  sort: "Sort",
  sorts: { worst: "worst first", place: "west to east", excess: "furthest past the limit" },
  nowhere: "no place on the ground",
  more: (count: number) => `Show ${count} more`,
  counted: (severity: Severity, count: number) => `${count} ${count === 1 ? severity : `${severity}s`}`,
  waivedCount: (count: number) => `${count} waived`,
  lookAtFixes: (count: number) => `Fix all ${count}`,
  applyAll: (count: number) => `Apply ${count} ${count === 1 ? "fix" : "fixes"}`,
  applyAllTold: (count: number, refusedCount: number) =>
    `${count} ${count === 1 ? "finding is" : "findings are"} mended as one edit; undo takes all of them back.${
      refusedCount > 0 ? ` ${refusedCount} more stand in each other's way and stay.` : ""
    }`,
  applied: (count: number, title: string) => `Fix ${count}: ${title}`,
  fixTold: (label: string) => `${label}. It can be undone.`,
  explain: "Explain",
  waive: "Waive",
  takeBack: "Take the waiver back",
  reason: "Reason",
  by: "Name",
  keepWaiver: "Waive it",
  giveUp: "Give up",
  waivedBy: (by: string, reason: string) => `waived by ${by}: ${reason}`,
  needed: "A waiver needs a reason and a name; both print on the drawings.",
  rule: "Rule",
  asked: (what: string) => `Asked of every ${what} after every edit that touches it.`,
  basis: "Limit from",
  figures: "Figures",
  reckoned: "How the figure comes about",
  severity: {
    error: "Error: the route cannot be built or run so.",
    warning: "Warning: someone must decide.",
    note: "Note: worth knowing.",
  },
} as const;
