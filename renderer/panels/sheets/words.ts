import type { SheetKind } from "../../../core/sheets/book.ts";

/** Kinds of sheets as the office calls them. */
export const kindWords: Readonly<Record<SheetKind, string>> = {
  cover: "Cover",
  revision: "Revisions and changes",
  plan: "Strand plan",
  profile: "Profiles",
  stringing: "Stringing tables",
  guy: "Guy schedule",
  permit: "Pole permit list",
  terminal: "Terminal sheets",
  fiber: "Fiber charts",
  reel: "Cables and reels",
  schedule: "Schedules",
  bill: "Bill of materials",
  findings: "Findings",
  worksheet: "Worksheets",
};

export const words = {
  list: "Sheets",
  empty: "The set has no sheets yet. Import poles, then lay out terminals.",
  back: "Back to the diagram",
  next: "Next sheet",
  previous: "Previous sheet",
  zoomIn: "Enlarge the sheet",
  zoomOut: "Reduce the sheet",
  fit: "Show the whole sheet",
  jump: "Go to sheet",
  which: "Sheets to draw",
  range: "Numbers, such as 3-5, 9",
  draw: "Draw these sheets",
  badRange: (last: number): string => `Write numbers from 1 to ${last}, such as 3-5, 9.`,
  place: (position: number, count: number): string => `Sheet ${position} of ${count}`,
  all: (count: number): string => `All ${count}`,
  shown: "The one shown",
  byNumber: "By number",
  sheet: (number: string, title: string): string => `Sheet ${number}, ${title}`,
  leads: (to: string): string => `Go to sheet ${to}`,
};
