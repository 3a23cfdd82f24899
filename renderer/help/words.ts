import type { TableName } from "../../core/model/tables.ts";
import type { Severity } from "../../core/rules/rule.ts";

/** Words of the help. */
export const words = {
  title: "Help",
  search: "Search the help",
  contents: "Contents",
  found: "Found in the help",
  close: "Put the help away",
  none: (sought: string): string => `No page holds “${sought}”. Try another word of the trade.`,
  looksAt: (each: string): string => `Looks at each ${each}, and at it again whenever something it leans on changes.`,
  setting: (name: string, meaning: string): string => `the company's standard “${name}”: ${meaning}`,
  limit: "Limit from",
  mark: "Trust",
  everySheet: "On every sheet",
  crew: "For the crew",
  terminal: "At a terminal",
} as const;

export const severityWords: Readonly<Record<Severity, string>> = {
  error: "error: the route cannot be built or run so",
  warning: "warning: someone must decide",
  note: "note: worth knowing",
};

/** How one row of a table is called. */
export const eachWords: Partial<Readonly<Record<TableName, string>>> = {
  settings: "route as a whole",
  livingUnit: "living unit",
  fiberUse: "fiber in use",
  strandSection: "stretch of strand",
  slack: "coil",
  clearanceSet: "clearance set",
};
