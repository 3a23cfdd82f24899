import type { Attachment } from "../../core/model/tables.ts";
import type { ProfileCase } from "../../core/plant/profileSpan.ts";
import { attachmentWords } from "../panels/words.ts";

/** Words of the profile. */
export const profileWords = {
  show: "Show the profile",
  hide: "Put the profile away",
  room: "Profile",
  hand: "Profile along the line. Left and right walk from station to station, up and down choose an attachment of the pole, Enter types its height; 0 shows the whole path, 2 the span here, plus and minus zoom.",
  divider: "Size of the profile",
  way: "Cable or strand",
  bareStrand: (name: string) => `Strand ${name}, no cable`,
  fit: "Show the whole path",
  noWay: "No strand and no cable runs along this route yet. String a line first, then its profile stands here.",
  groundUnknown: "ground unknown",
  heardList: "What the profile shows",
  key: "Lines",
  heightField: (what: string) => `Height of ${what} above the ground`,
  notPositive: "A height above the ground is more than nothing.",
  unknownPlace: "Nothing can be told here.",
  ground: "the ground",
  limit: "Limit",
  noLimit: "none",
  condition: "Case",
  aboveGround: "Above ground",
  over: (what: string) => `Over ${what}`,
  least: (what: string) => `Least over ${what}`,
  atPole: (what: string) => `From ${what} at the pole`,
} as const;

/** Words of the field for how tight a strand is strung. */
export const tensionWords = {
  noStrand: "Walk to a span to change how tight its strand is strung.",
  sagOf: (section: string) => `Stringing sag of ${section}, % of the span`,
  strung: (tension: string) => `${tension} as strung`,
  between: "A strand is strung to a sag of 0.2 to 5 % of its span here.",
} as const;

/** Words of dimensions. */
export const dimensionWords = {
  beside: (distance: string) => `${distance} beside`,
  limit: (limit: string, isUnverified: boolean) => `limit ${limit}${isUnverified ? ", unverified" : ""}`,
  noLimit: "no limit in the clearance set",
  passes: (way: "over" | "under") => `the line passes ${way} it`,
  short: (by: string) => `◆ ${by} short`,
} as const;

export const caseWords: Readonly<Record<ProfileCase, string>> = {
  cold: "Cold",
  stringing: "Strung",
  hot: "Hot",
  iced: "Iced",
  extremeWind: "Extreme wind",
  extremeIce: "Extreme ice",
  worker: "Worker at midspan",
};

/** What an attachment is called: what it is and whose. */
export function attachmentName({ kind, owner }: Attachment): string {
  return kind === "ourStrand" || owner === "" ? attachmentWords[kind] : `${attachmentWords[kind]}, ${owner}`;
}
