import type { Attachment, Crossing, Structure, Terminal } from "../model/tables.ts";
import type { ProfileCase } from "../plant/profileSpan.ts";
import type { PortView } from "../plant/terminalView.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

/** What a crossing is called on a drawing. */
const crossingWords: Readonly<Record<Crossing["surface"], string>> = {
  road: "Road",
  highLoadRoad: "High-load road",
  driveway: "Drive",
  roadside: "Roadside",
  rail: "Rail",
  water: "Water",
  sailingWater: "Sailing water",
  pedestrian: "Path",
  field: "Field",
};

/** A crossing's trade word and its name; the name alone where it says the word itself. */
export function crossingName(surface: Crossing["surface"], name: string): string {
  const word = crossingWords[surface];
  if (name === "") return word;
  return name.toLowerCase().startsWith(word.toLowerCase()) ? name : `${word}: ${name}`;
}

const structureWords: Readonly<Record<Structure["kind"], string>> = {
  building: "Building",
  walkedRoof: "Roof people walk on",
  sign: "Sign",
  litSign: "Lit sign",
  walkedSign: "Sign people walk on",
};

/** What a port without a drop is: spare, or reserved and for whom. */
export function emptyPortWords({ reservedFor }: Terminal, { isReserved }: PortView): string {
  if (!isReserved) return "spare";
  return reservedFor === "" ? "reserved" : `reserved for ${reservedFor}`;
}

/** A structure by its name, else by its kind, and how far beside the line it stands. */
export function structureName({ kind, name, besideM, side }: Structure, system: UnitSystem): string {
  const what = name === "" ? structureWords[kind] : name;
  return besideM > 0 ? `${what}, ${formatLength(besideM, system, "height")} ${side}` : what;
}

/** What an attachment is called beside its owner's name; a communication line goes by its owner alone. */
export const attachmentWords: Readonly<Record<Attachment["kind"], string>> = {
  ourStrand: "strand",
  communication: "",
  neutral: "neutral",
  secondary: "secondary",
  primary: "primary",
  equipment: "equipment",
  streetLight: "street light",
  riser: "riser",
};

/** What a case the line is shown in is called. */
export const caseWords: Readonly<Record<ProfileCase, string>> = {
  cold: "cold",
  stringing: "strung",
  hot: "hot",
  iced: "iced",
};
