import type { Revision } from "../../../core/model/tables.ts";

/** Words of the revisions. */
export const revisionWords = {
  title: "Revisions",
  show: "Show the revisions",
  hide: "Put the revisions away",
  issued: "Issued",
  none: "No revision is issued yet. Issuing one freezes the drawings as they are now, under a letter.",
  issue: (letter: string): string => `Issue revision ${letter}`,
  issueNext: "Issue a revision",
  letter: "Letter",
  date: "Date",
  by: "By",
  checkedBy: "Checked by",
  reason: "Reason",
  needed: "Letter, date, name and reason are needed.",
  neededName: "A name is needed.",
  neededReason: "A name and a reason are needed.",
  giveUp: "Give up",
  approve: "Approve",
  makeVoid: "Void",
  approveOf: (letter: string): string => `Approve revision ${letter}`,
  voidOf: (letter: string): string => `Void revision ${letter}`,
  preview: "Show sheets",
  previewOf: (letter: string): string => `Show sheets of revision ${letter}`,
  changedSince: (letter: string): string => `Changed since revision ${letter}`,
  changedTo: (letter: string, since: string): string => `Changed from revision ${since} to ${letter}`,
  unchanged: (letter: string): string => `Nothing has changed since revision ${letter}.`,
  head: ({ letter, dateIso }: Revision): string => `${letter}, ${dateIso}`,
  people: ({ by, checkedBy }: Revision): string => (checkedBy === "" ? by : `${by}, checked by ${checkedBy}`),
  standing: ({ approvedBy, approvedIso, voidedBy, voidedIso, voidReason }: Revision): string => {
    if (voidedBy !== "") return `Void since ${voidedIso}, by ${voidedBy}: ${voidReason}`;
    return approvedBy === "" ? "Not approved yet" : `Approved ${approvedIso} by ${approvedBy}`;
  },
} as const;
