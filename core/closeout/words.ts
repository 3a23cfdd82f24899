import type { BuiltKind, ReadingKind } from "../model/closeoutRows.ts";

/** Kinds of things that are built, as one says them. */
export const builtKindWords: Readonly<Record<BuiltKind, { readonly one: string; readonly many: string }>> = {
  pole: { one: "pole", many: "poles" },
  span: { one: "span", many: "spans" },
  strandSection: { one: "strand", many: "strand" },
  cable: { one: "cable", many: "cables" },
  closure: { one: "closure", many: "closures" },
  terminal: { one: "terminal", many: "terminals" },
  port: { one: "port", many: "ports" },
  drop: { one: "drop", many: "drops" },
  bond: { one: "bond", many: "bonds" },
};

/** What is read, as a heading. */
export const readingWords: Readonly<Record<ReadingKind, string>> = {
  offset: "from the pole",
  slack: "coil left",
  mark: "sheath mark",
  markBefore: "mark before the opening",
  markAfter: "mark after the opening",
  height: "strand height",
  power: "light",
  continuity: "bond conducts",
  resistance: "ground resistance",
  houseTag: "house tag",
  portOfDrop: "port of the drop",
  note: "note",
};
