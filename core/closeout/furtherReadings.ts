import { cablesAtPole } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { type AskedReading, askedReadings } from "./askedReadings.ts";
import { readingId, type Subject, subjectOf } from "./subject.ts";

/**
 * Readings a thing may have beside those it needs: the mark on every cable's sheath that comes by a pole, and whatever else was read of it,
 * such as light at other wavelengths.
 */
export function furtherReadings(plant: Plant, subject: Subject): readonly AskedReading[] {
  const { kind, subjectId, port, alongId } = subject;
  const read = plant
    .where("reading", "subjectId", subjectId)
    .map((id) => plant.rowOf("reading", id))
    .filter((one) => one.kind === kind && one.port === port && (kind === "pole" || one.alongId === alongId))
    .map((one) => further(subjectOf(kind, subjectId, port, one.alongId), one.what, one.wavelengthNm));
  const asked = new Set(askedReadings(plant, subject).map((one) => one.id));
  const all = [...(kind === "pole" ? marksAtPole(plant, subjectId) : []), ...read];
  return [...new Map(all.map((one) => [one.id, one])).values()].filter((one) => !asked.has(one.id));
}

/** The mark on the sheath of each cable that comes by a pole. */
export function marksAtPole(plant: Plant, poleId: string): readonly AskedReading[] {
  return cablesAtPole(plant, poleId).map((cableId) => further(subjectOf("pole", poleId, 0, cableId), "mark", 0));
}

function further(subject: Subject, what: AskedReading["what"], wavelengthNm: number): AskedReading {
  return { id: readingId(subject, what, wavelengthNm), subject, what, wavelengthNm, drawn: null };
}
