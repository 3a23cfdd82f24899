import type { ImportKind } from "../../app/importing.ts";

/** What each kind of list is called, in the order they are brought in. */
export const kindWords: Readonly<Record<ImportKind, string>> = {
  pole: "Poles",
  livingUnit: "Living units",
  attachment: "Attachments on poles",
  crossing: "Crossings under spans",
  groundPoint: "Ground points under spans",
  structure: "Buildings and signs beside spans",
  guy: "Guys and anchors",
  wireSag: "Sags of others' wires",
  dropCrossing: "Things under drops",
  spanPair: "Spans as pairs of poles",
};

/** Words of the import. */
export const words = {
  title: "Import",
  close: "Close",
  lists: "What the file lists",
  file: "File",
  chooseFile:
    "Choose a file: CSV, XLSX, GeoJSON, KML, KMZ or GPX. It is shown here as it will be read before anything is taken.",
  lengthUnit: "Lengths without a unit are in",
  byHeadings: "what the headings say",
  feet: "feet",
  metres: "metres",
  takeGood: "Take the good rows when others are bad",
  replace: "Replace rows that are already in the route",
  noFile: "No file is chosen.",
  beingRead: "The file is being read.",
  unreadable: "The file cannot be read.",
  notAsItIs: "The file cannot be taken as it is.",
  noChange: "The file would change nothing.",
  take: (count: number | null): string =>
    count === null ? "Take the rows in" : count === 1 ? "Take 1 row in" : `Take ${count} rows in`,
  sum: (newCount: number, changedCount: number, leftCount: number, badCount: number, spanCount: number): string =>
    `${newCount} new, ${changedCount} changed, ${leftCount} left as they are, ${badCount} bad${spanCount > 0 ? `, ${spanCount} spans` : ""}`,
  notes: "Notes",
  badRows: "Bad rows",
  lines: { line: "Line", row: "Row", feature: "Feature", placemark: "Placemark", waypoint: "Waypoint" },
  column: "Column",
  value: "Value",
  wrong: "What is wrong",
  accepted: "Accepted",
  columns: "Columns",
  needed: (title: string): string => `${title} (needed)`,
  notInFile: "not in the file",
  firstRows: "First rows",
  spansToLookAt: "Spans to look at",
  review: (fromTag: string, toTag: string, why: string): string => `${fromTag} to ${toTag}: ${why}`,
  firstOf: (shown: number, count: number): string => `The first ${shown} of ${count} are listed.`,
} as const;
