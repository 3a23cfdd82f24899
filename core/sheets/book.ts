import type { Finding } from "../rules/finding.ts";
import type { Mark, SheetLink } from "./paper/displayList.ts";

/** Kinds of sheets, in the order they are bound; worksheets are drawn by themselves. */
export const sheetKinds = [
  "cover",
  "revision",
  "notes",
  "plan",
  "profile",
  "stringing",
  "guy",
  "permit",
  "bonding",
  "terminal",
  "splice",
  "fiber",
  "reel",
  "schedule",
  "bill",
  "cost",
  "findings",
  "closeout",
  "report",
  "worksheet",
] as const;
export type SheetKind = (typeof sheetKinds)[number];

/** What a composer draws inside the frame. */
export type Drawn = { readonly marks: readonly Mark[]; readonly links?: readonly SheetLink[] };

/** A sheet to be drawn once every sheet has its number. */
export type Draft = {
  /** Unique in the set; other sheets refer to it by this. */
  readonly key: string;
  /** Further keys that lead to it, such as those of strips that share it. */
  readonly otherKeys?: readonly string[];
  readonly kind: SheetKind;
  readonly title: string;
  /** What stands on it and is looked for by name, in its order; where not given, the title. */
  readonly names?: readonly string[];
  /** What the title block says of the scale. */
  readonly scale: string;
  readonly draw: (book: Book) => Drawn;
};

/** What a sheet may know of the whole set. */
export type Book = {
  /** Number of the sheet with this key; undefined where it is not in the set. */
  readonly numberOf: (key: string) => string | undefined;
  readonly sheets: readonly {
    readonly key: string;
    readonly kind: SheetKind;
    readonly number: string;
    readonly title: string;
    readonly scale: string;
  }[];
  /** Findings nobody waived, with the numbers they are listed under. */
  readonly openFindings: readonly NumberedFinding[];
};

/** What several findings say alike: the sentence with three points for the name, the name in this one, and how many they are. */
export type Alike = { readonly shape: string; readonly name: string; readonly count: number };

/** An open finding with the number it is listed under, which it shares with those that say the same; null where none does. */
export type NumberedFinding = { readonly number: number; readonly finding: Finding; readonly alike: Alike | null };

/** Key of the sheet that shows a terminal. */
export function terminalKey(terminalId: string): string {
  return `terminal ${terminalId}`;
}
