import type { LengthUnit } from "./importOptions.ts";

/** A heading taken apart: its bare words run together, and the unit it names. */
export type BareHeading = {
  /** Letters and digits only, lower case, without the unit. */
  readonly key: string;
  /** The same with the unit's word left on. */
  readonly wholeKey: string;
  readonly words: readonly string[];
  readonly unit: LengthUnit | null;
};

const unitWords: Readonly<Record<string, LengthUnit>> = {
  ft: "ft",
  feet: "ft",
  foot: "ft",
  m: "m",
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  usft: "usft",
  ftus: "usft",
};

/** Takes a heading apart: `height_ft`, `Height (m)`, `PoleID`, `addr:housenumber`, `X (US survey ft)`. */
export function bareHeading(heading: string): BareHeading {
  const all = wordsOf(heading.replace(/\bu\.?s\.? ?(?:survey)? ?(?:ft|feet|foot)\b/i, "usft"));
  const last = all.length > 1 ? (all.at(-1) ?? "") : "";
  const unit = Object.hasOwn(unitWords, last) ? (unitWords[last] ?? null) : null;
  const words = unit === null ? all : all.slice(0, -1);
  return { key: words.join(""), wholeKey: all.join(""), words, unit };
}

function wordsOf(text: string): string[] {
  return text
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
}
