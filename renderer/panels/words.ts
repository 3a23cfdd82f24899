import type { Attachment, Structure } from "../../core/model/tables.ts";
import { dropCutM, dropRunM } from "../../core/plant/dropView.ts";
import { spanName } from "../../core/plant/names.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { portCounts, terminalPlace } from "../../core/plant/terminalView.ts";
import { capital } from "../../core/units/capital.ts";
import { metresPerFoot } from "../../core/units/constants.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { type RefKey, splitRef } from "../app/ref.ts";
import { surfaceWords } from "../canvas/crossingMarks.ts";

/** Words of the side panel and of the strips. */
export const panelWords = {
  chosen: "What is chosen",
  several: (count: number): string => `${count} chosen`,
  findings: "Findings",
  noFinding: "No rule found anything here.",
  firstListed: (count: number): string => `The first ${count} are listed.`,
  stopping: "stopping",
  underWay: "under way",
  work: (name: string, how: string): string => `${name}: ${how}`,
  putAway: "Put the message away",
  face: (usedCount: number, reservedCount: number, count: number): string =>
    `Face of the terminal: ${usedCount} of ${count} ports used${reservedCount === 0 ? "" : `, ${reservedCount} reserved`}`,
} as const;

/** Cases of clearance and strength as a list names them. */
export const conditionWords = {
  stringing: "Stringing",
  hot: "Hot",
  iced: "Iced",
  loaded: "Loaded",
  extremeWind: "Extreme wind",
  extremeIce: "Extreme ice",
  worker: "Worker at midspan",
} as const;

/** What a view says that has nothing in it. */
export const emptyWords = {
  diagram: "Nothing is on this route yet. Bring in the poles first, then the living units, or draw the line by hand.",
  side: "Nothing is on this route yet to tell about. Bring in the poles first.",
} as const;

/** What an attachment is, as a list or a drawing on the screen names it. */
export const attachmentWords: Readonly<Record<Attachment["kind"], string>> = {
  ourStrand: "our strand",
  communication: "communication",
  neutral: "neutral",
  secondary: "secondary",
  primary: "primary",
  supplyFiber: "fiber in the supply space",
  equipment: "equipment",
  streetLight: "street-light bracket",
  dripLoop: "drip loop",
  riser: "riser bracket",
};

/** What each kind of structure is called on the screen. */
export const structureWords: Readonly<Record<Structure["kind"], string>> = {
  building: "building",
  walkedRoof: "roof people walk on",
  sign: "sign",
  litSign: "lit sign",
  groundedLitSign: "lit sign, grounded",
  walkedSign: "sign people walk on",
  chimney: "chimney, antenna or tank",
};

/** What a row is called: its kind and its name, as the crew says them. */
export function titleOf(plant: Plant, ref: RefKey): string {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return "Something that is gone";
  switch (table) {
    case "pole":
      return `Pole ${plant.rowOf("pole", id).tag}`;
    case "terminal":
      return `Terminal ${plant.rowOf("terminal", id).name}`;
    case "span":
      return `Span ${spanName(plant, id)}`;
    case "livingUnit":
      return plant.rowOf("livingUnit", id).address;
    case "crossing": {
      const { name, surface } = plant.rowOf("crossing", id);
      const word = surfaceWords[surface];
      return name === "" ? `${capital(word)} crossing` : name;
    }
    case "slack":
      return plant.rowOf("slack", id).kind === "access" ? "Access coil" : "Storage coil";
    case "closure":
      return `Closure ${plant.rowOf("closure", id).name}`;
    case "guy":
      return `Guy of pole ${plant.rowOf("pole", plant.rowOf("guy", id).poleId).tag}`;
    case "structure": {
      const { name, kind } = plant.rowOf("structure", id);
      return name || capital(structureWords[kind]);
    }
    case "groundPoint":
      return `Ground point of span ${spanName(plant, plant.rowOf("groundPoint", id).spanId)}`;
    case "attachment": {
      const { kind, owner, poleId } = plant.rowOf("attachment", id);
      const whose = kind === "ourStrand" || owner === "" ? "" : ` of ${owner}`;
      return `${capital(attachmentWords[kind])}${whose} on pole ${plant.rowOf("pole", poleId).tag}`;
    }
    case "cable":
      return `Cable ${plant.rowOf("cable", id).name}`;
    case "strandSection":
      return `Strand ${plant.rowOf("strandSection", id).name}`;
    case "drop": {
      const drop = plant.rowOf("drop", id);
      return `Drop to ${plant.rowOf("livingUnit", drop.livingUnitId).address}`;
    }
    default:
      return capital(table.replace(/([A-Z])/g, " $1").toLowerCase());
  }
}

/** One short line about a row: what one wants to know before choosing it. */
export function hintOf(plant: Plant, ref: RefKey, units: UnitSystem): string {
  const { table, id } = splitRef(ref);
  if (!plant.row(table, id)) return "";
  switch (table) {
    case "pole": {
      const { aboveGroundM, poleClass } = plant.rowOf("pole", id);
      const height =
        aboveGroundM === null ? "height unknown" : `${formatLength(aboveGroundM, units, "height")} above ground`;
      return poleClass === "" ? height : `${height}, class ${poleClass}`;
    }
    case "terminal": {
      const { total, used } = portCounts(plant, id);
      return `${placeWords(plant, id, units)}; ${used} of ${total} ports used`;
    }
    case "span":
      return formatLength(plant.rowOf("span", id).lengthM, units, "span");
    case "livingUnit":
      return servedWords(plant, id, units);
    case "slack":
      return `${formatLength(plant.rowOf("slack", id).storedM, units, "span")} of sheath`;
    case "guy": {
      const { leadM, heightM } = plant.rowOf("guy", id);
      return `lead ${formatLength(leadM, units, "height")}, ${formatLength(heightM, units, "height")} up the pole`;
    }
    case "structure": {
      const { besideM, heightM } = plant.rowOf("structure", id);
      const where = besideM === 0 ? "under the line" : `${formatLength(besideM, units, "height")} beside the line`;
      return `${where}, top at ${formatLength(heightM, units, "height")}`;
    }
    case "groundPoint": {
      const { groundM, offsetM, spanId } = plant.rowOf("groundPoint", id);
      const first = plant.rowOf("pole", plant.rowOf("span", spanId).fromPoleId).tag;
      return `elevation ${formatLength(groundM, units, "height")}, ${formatLength(offsetM, units, "span")} from ${first}`;
    }
    case "crossing":
      return `${spanName(plant, plant.rowOf("crossing", id).spanId)}`;
    default:
      return "";
  }
}

/** Where a terminal hangs, as one says it on the ground: "36 in from pole P-12 toward P-13". */
export function placeWords(plant: Plant, terminalId: string, units: UnitSystem): string {
  const place = terminalPlace(plant, terminalId);
  const span = plant.rowOf("span", plant.rowOf("terminal", terminalId).spanId);
  const farId = place.atFirstPole ? span.toPoleId : span.fromPoleId;
  const near = plant.rowOf("pole", place.poleId).tag;
  return `${offsetWords(place.fromPoleM, units)} from pole ${near} toward ${plant.rowOf("pole", farId).tag}`;
}

/** A distance along the strand from a pole: inches while it is short, feet beyond. */
export function offsetWords(distanceM: number, units: UnitSystem): string {
  return formatLength(distanceM, units, distanceM < 10 * metresPerFoot ? "offset" : "height");
}

/** The drop of a living unit in words, or that it has none. */
function servedWords(plant: Plant, livingUnitId: string, units: UnitSystem): string {
  const [first, ...more] = plant.where("drop", "livingUnitId", livingUnitId).map((id) => plant.rowOf("drop", id));
  if (!first) return "no port yet";
  const name = plant.rowOf("terminal", first.terminalId).name;
  const length = formatLength(dropRunM(plant, first.id), units, "drop");
  return `${name} port ${first.port}, ${length} away${more.length > 0 ? `, and ${more.length} more` : ""}`;
}

/** Drop cable to cut for a drop, as printed. */
export function cutWords(plant: Plant, dropId: string, units: UnitSystem): string {
  return formatLength(dropCutM(plant, dropId), units, "drop");
}

/** A phrase as it begins a line. */
