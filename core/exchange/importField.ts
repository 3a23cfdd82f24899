/** What the cells of a field hold. */
export type ValueKind =
  | "text"
  /** Names a row: a column whose cells repeat is unlikely to be it. */
  | "tag"
  /** Names a building, and never its kind. */
  | "buildingName"
  | "number"
  | "length"
  | "poleLength"
  | "count"
  | "yesNo"
  | "volts"
  | "unitKind"
  | "attachmentKind"
  | "surface"
  | "dropSurface"
  | "structureKind"
  | "side"
  | "wireKind"
  | "force";

/** One thing an import can take from a column. */
export type ImportField = {
  readonly field: string;
  readonly title: string;
  readonly required: boolean;
  readonly kind: ValueKind;
  /** Headings people write for it, likeliest first; case, blanks and punctuation do not count. */
  readonly titles: readonly string[];
};

/** Headings of the pole something is on. */
export const tagTitles = [
  "tag",
  "pole tag",
  "pole",
  "pole number",
  "pole no",
  "pole num",
  "pole id",
  "pole name",
  "structure id",
  "structure",
];
/** Headings of a span's first pole. */
export const fromTitles = ["from pole", "from", "from tag", "pole from", "pole a", "a pole", "start pole"];
/** Headings of a span's far pole. */
export const toTitles = ["to pole", "to", "to tag", "pole to", "pole b", "b pole", "end pole"];

/** A field that must have a column. */
export function required(field: string, title: string, kind: ValueKind, titles: readonly string[]): ImportField {
  return { field, title, required: true, kind, titles };
}

/** A field that may be left out. */
export function optional(field: string, title: string, kind: ValueKind, titles: readonly string[]): ImportField {
  return { field, title, required: false, kind, titles };
}
