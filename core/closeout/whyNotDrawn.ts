import { defineQuery, type Plant } from "../plant/plant.ts";
import { carriesStrand } from "../plant/separation.ts";
import { coilOfTerminal } from "../plant/sheathOpening.ts";
import { portsOf } from "../plant/terminalView.ts";
import { readingId, subjectOf } from "./subject.ts";

/** Why the design cannot take what was read, and the most it could take where there is such a figure, m. */
export type NotDrawn = { readonly why: string; readonly mostM: number | null };

/**
 * Why the design cannot take a height, an offset, a coil or the port of a drop as it was read, so that it stays out of the route as built;
 * null where it can, and for any other reading, which no drawing holds.
 */
export const whyNotDrawn = defineQuery("why-not-drawn", (plant, id): NotDrawn | null => {
  const { kind, what, subjectId, value } = plant.rowOf("reading", id);
  if (value === null || (kind !== "pole" && kind !== "terminal" && kind !== "drop")) return null;
  if (!plant.row(kind, subjectId)) return null;
  switch (`${kind} ${what}`) {
    case "pole height":
      return whyNotHeight(plant, subjectId, value);
    case "terminal offset":
      return whyNotOffset(plant, subjectId, value);
    case "terminal slack":
      if (!coilOfTerminal(plant, subjectId)) return because("no coil is drawn there");
      return value > 0 ? null : because("a coil holds some cable");
    case "drop portOfDrop":
      return whyNotPort(plant, subjectId, value);
    default:
      return null;
  }
});

function whyNotHeight(plant: Plant, poleId: string, heightM: number): NotDrawn | null {
  const { aboveGroundM } = plant.rowOf("pole", poleId);
  if (!(heightM > 0)) return because("that is not above the ground");
  if (aboveGroundM !== null && heightM > aboveGroundM)
    return because("that is above the top of the pole", aboveGroundM);
  return carriesStrand(plant, poleId) ? null : because("no strand of ours is drawn there");
}

function whyNotOffset(plant: Plant, terminalId: string, fromPoleM: number): NotDrawn | null {
  const { lengthM } = plant.rowOf("span", plant.rowOf("terminal", terminalId).spanId);
  if (!(fromPoleM > 0)) return because("a terminal hangs off its pole");
  // beyond the middle it would be drawn as hanging at the other pole, and what was read be held against that
  return fromPoleM < lengthM / 2 ? null : because("that is past the middle of its span", lengthM / 2);
}

/** A port that another drop was found in, or is drawn on and nobody looked, is not drawn twice. */
function whyNotPort(plant: Plant, dropId: string, port: number): NotDrawn | null {
  const { terminalId, port: drawnPort } = plant.rowOf("drop", dropId);
  if (port === drawnPort) return null;
  if (!portsOf(plant, terminalId).some((one) => one.port === port)) return because("the terminal has no such port");
  const holder = plant
    .where("drop", "terminalId", terminalId)
    .find((one) => one !== dropId && portFound(plant, one) === port);
  if (holder === undefined) return null;
  const { livingUnitId } = plant.rowOf("drop", holder);
  return because(`the drop of ${plant.rowOf("livingUnit", livingUnitId).address} is in that port`);
}

function portFound(plant: Plant, dropId: string): number {
  const read = plant.row("reading", readingId(subjectOf("drop", dropId), "portOfDrop"))?.value ?? null;
  return read ?? plant.rowOf("drop", dropId).port;
}

function because(why: string, mostM: number | null = null): NotDrawn {
  return { why, mostM };
}
