import type { SheetKind } from "./book.ts";

/** Kinds of sheets as the office calls them. */
export const sheetKindWords: Readonly<Record<SheetKind, string>> = {
  cover: "Cover",
  revision: "Revisions and changes",
  notes: "General notes",
  plan: "Strand plan",
  profile: "Profiles",
  stringing: "Stringing tables",
  guy: "Guy schedule",
  permit: "Pole permit list",
  bonding: "Bonding schedule",
  terminal: "Terminal sheets",
  splice: "Splice sheets",
  fiber: "Fiber charts",
  reel: "Cables and reels",
  schedule: "Schedules",
  bill: "Bill of materials",
  cost: "Bill with prices",
  findings: "Findings",
  closeout: "Closeout forms",
  report: "Closeout report",
  worksheet: "Worksheets",
};
