import type { Attachment, Crossing, Structure, Terminal } from "../model/tables.ts";
import type { ProfileCase } from "../plant/profileSpan.ts";
import type { PortView } from "../plant/terminalView.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

/** What a crossing is called on a drawing. */
const crossingWords: Readonly<Record<Crossing["surface"], string>> = {
  road: "Road",
  highLoadRoad: "High-load road",
  stateHighway: "State highway",
  limitedAccessRoad: "Limited-access road",
  driveway: "Drive",
  homeDriveway: "Residential drive",
  alongStreet: "Along a street",
  alongRoad: "Along a country road",
  roadside: "Roadside",
  rail: "Rail",
  trolley: "Rail with trolley wire",
  water: "Water",
  sailingWater20: "Sailing water under 20 ac",
  sailingWater200: "Sailing water to 200 ac",
  sailingWater2000: "Sailing water to 2000 ac",
  sailingWater: "Sailing water over 2000 ac",
  launch20: "Boat launch, water under 20 ac",
  launch200: "Boat launch, water to 200 ac",
  launch2000: "Boat launch, water to 2000 ac",
  launch: "Boat launch, water over 2000 ac",
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
  groundedLitSign: "Lit sign, grounded",
  walkedSign: "Sign people walk on",
  chimney: "Chimney, antenna or tank",
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
  supplyFiber: "supply fiber",
  equipment: "equipment",
  streetLight: "street-light bracket",
  dripLoop: "drip loop",
  riser: "riser bracket",
};

/** What a case the line is shown in is called. */
export const caseWords: Readonly<Record<ProfileCase | "loaded", string>> = {
  cold: "cold",
  stringing: "strung",
  hot: "hot",
  iced: "iced",
  loaded: "loaded",
  extremeWind: "extreme wind",
  extremeIce: "extreme ice",
  worker: "worker",
};

/** A thing by its kind and name, the kind said once: cable "Main" is `Cable Main`, cable "Cable 1" is `Cable 1`. */
export function kindAndName(kind: string, name: string): string {
  return name.toLowerCase().startsWith(`${kind.toLowerCase()} `) ? name : `${kind} ${name}`;
}
