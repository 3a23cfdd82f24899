import type { DropSurface, LineSurface } from "../model/clearanceRows.ts";
import type { Attachment, LivingUnit } from "../model/tables.ts";
import { metresPerUsSurveyFoot } from "../units/constants.ts";
import { parseLengthM } from "../units/parseLength.ts";
import type { LengthUnit } from "./importOptions.ts";

/** A cell read as what its column holds, or why it cannot be. */
export type CellValue<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly what: string; readonly accepted: string };

const plainNumber = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const decimalComma = /^[+-]?\d+,\d+$/;
const thousandsComma = /^[+-]?\d{1,3}(?:,\d{3})+$/;

/** A plain number, with a point or a comma for decimals; 1,234 could be either and is refused. */
export function readNumber(text: string): CellValue<number> {
  const plain = text.trim().replace(/\u2212/g, "-");
  const pointed = decimalComma.test(plain) && !thousandsComma.test(plain) ? plain.replace(",", ".") : plain;
  const value = plainNumber.test(pointed) ? Number(pointed) : Number.NaN;
  return Number.isFinite(value)
    ? { ok: true, value }
    : {
        ok: false,
        what: `"${text}" cannot be read as a number.`,
        accepted: "a number such as 42.37, without thousands marks",
      };
}

/** A length in metres, rounded to 0.1 mm; a unit written in the cell goes before the column's. */
export function readLengthM(text: string, unit: LengthUnit): CellValue<number> {
  const number = readNumber(text);
  if (number.ok && unit === "usft") return { ok: true, value: tenthMm(number.value * metresPerUsSurveyFoot) };
  const parsed = parseLengthM(number.ok ? fixed(number.value) : text, unit === "m" ? "metric" : "us");
  if (parsed.ok) return { ok: true, value: tenthMm(parsed.valueM) };
  return { ok: false, what: parsed.what, accepted: "a length such as 45, 45 ft, 10 ft 6 in or 13.7 m" };
}

/** Without an exponent, which a length is never written with; ten decimals of a metre are enough for any length. */
function fixed(value: number): string {
  return String(value).includes("e") ? value.toFixed(10) : String(value);
}

function tenthMm(valueM: number): number {
  return Math.round(valueM * 10_000) / 10_000 + 0;
}

const volts = /^([\d.,]+) ?(k?)v?$/i;

/** A voltage to ground in volts; `7.2 kV` and, in a column of kilovolts, `7.2`. */
export function readVolts(text: string, isKilovolts: boolean): CellValue<number> {
  const match = volts.exec(text.trim());
  const number = match ? readNumber(match[1] ?? "") : null;
  if (!match || !number?.ok)
    return { ok: false, what: `"${text}" cannot be read as a voltage.`, accepted: "volts such as 120, or 7.2 kV" };
  const isKilo = match[2] !== "" || (isKilovolts && !/v$/i.test(text.trim()));
  return { ok: true, value: Math.round(number.value * (isKilo ? 1_000_000 : 1000)) / 1000 };
}

/** A whole number from 0. */
export function readCount(text: string): CellValue<number> {
  const number = readNumber(text);
  const isCount = number.ok && Number.isSafeInteger(number.value) && number.value >= 0;
  return isCount
    ? number
    : { ok: false, what: `"${text}" is not a whole number from 0.`, accepted: "a whole number such as 12" };
}

const yes = ["yes", "y", "true", "1", "allowed", "ok"];
const no = ["no", "n", "false", "0", "not allowed", "none"];

export function readYesNo(text: string): CellValue<boolean> {
  const plain = text.trim().toLowerCase();
  if (yes.includes(plain)) return { ok: true, value: true };
  if (no.includes(plain)) return { ok: true, value: false };
  return { ok: false, what: `"${text}" is neither yes nor no.`, accepted: "yes or no" };
}

const unitKinds: Words<LivingUnit["kind"]> = {
  home: [
    "home",
    "house",
    "residential",
    "residence",
    "apartment",
    "apt",
    "dwelling",
    "condo",
    "duplex",
    "single family",
    "sfu",
    "mdu",
    "yes",
  ],
  business: ["business", "commercial", "shop", "store", "retail", "office", "industrial", "school", "church"],
  lot: ["lot", "vacant", "vacant lot", "empty lot", "empty", "land"],
};
const attachmentKinds: Words<Attachment["kind"]> = {
  ourStrand: ["our strand", "ourstrand", "own strand"],
  communication: [
    "communication",
    "communications",
    "comm",
    "com",
    "telephone",
    "telco",
    "phone",
    "cable tv",
    "catv",
    "fiber",
    "fibre",
    "strand",
  ],
  neutral: ["neutral", "system neutral", "mgn"],
  secondary: ["secondary", "sec", "triplex", "service", "low voltage"],
  primary: ["primary", "pri", "high voltage", "distribution"],
  supplyFiber: ["supply fiber", "supplyfiber", "supply fibre", "fiber in supply space", "power fiber"],
  equipment: ["equipment", "transformer", "regulator", "capacitor", "switch", "cutout"],
  streetLight: ["street light", "streetlight", "street lamp", "luminaire", "light", "street light bracket", "bracket"],
  dripLoop: ["drip loop", "driploop", "street light drip loop"],
  riser: ["riser", "conduit", "u-guard", "riser bracket"],
};
const surfaces: Words<LineSurface> = {
  road: ["road", "street", "highway", "alley", "truck road", "parking", "parking lot"],
  highLoadRoad: ["high load road", "high-load route"],
  stateHighway: ["state highway", "state road"],
  limitedAccessRoad: ["limited access road", "limited-access road", "motorway", "freeway", "expressway", "interstate"],
  driveway: ["driveway", "drive"],
  homeDriveway: ["residential driveway", "residential drive", "home driveway"],
  alongStreet: ["along street", "along a street"],
  alongRoad: ["along road", "along a road", "along a country road"],
  roadside: ["roadside", "verge"],
  rail: ["rail", "railroad", "railway", "track"],
  trolley: ["trolley", "railway with trolley wire", "electrified railway", "streetcar", "tram"],
  water: ["water", "creek", "river", "stream", "canal", "pond", "lake"],
  sailingWater20: ["sailing water under 20 acres"],
  sailingWater200: ["sailing water 20 to 200 acres"],
  sailingWater2000: ["sailing water 200 to 2000 acres"],
  sailingWater: ["sailing water", "sailing water over 2000 acres"],
  launch20: ["launch under 20 acres", "launch ramp under 20 acres"],
  launch200: ["launch 20 to 200 acres", "launch ramp 20 to 200 acres"],
  launch2000: ["launch 200 to 2000 acres", "launch ramp 200 to 2000 acres"],
  launch: ["launch ramp", "boat ramp", "rigging area", "launch over 2000 acres"],
  pedestrian: ["pedestrian", "sidewalk", "footway", "path", "walk", "trail"],
  field: ["field", "farm", "farmland", "orchard", "pasture", "yard"],
};

export const readUnitKind = wordReader(unitKinds);
export const readAttachmentKind = wordReader(attachmentKinds);
export const readSurface = wordReader(surfaces);
export const readDropSurface = wordReader<DropSurface>({
  ...surfaces,
  roof: ["roof", "building", "house", "garage", "shed"],
});

/** Words people write for each kind. */
type Words<T extends string> = Readonly<Record<T, readonly string[]>>;

/** A reader of cells that hold one of several words, in any case. */
export function wordReader<T extends string>(words: Words<T>): (text: string) => CellValue<T> {
  const known = new Map<string, T>();
  let word: T;
  for (word in words) for (const one of [word, ...words[word]]) known.set(one.toLowerCase(), word);
  const accepted = Object.keys(words).join(", ");
  return (text) => {
    const value = known.get(
      text
        .trim()
        .toLowerCase()
        .replace(/[\s_]+/g, " "),
    );
    return value === undefined
      ? { ok: false, what: `"${text}" is none of the kinds known here.`, accepted }
      : { ok: true, value };
  };
}
