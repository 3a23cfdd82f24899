import { placeAt, type TraceOnRoute } from "../closeout/traceOnRoute.ts";
import { fiberName, placeName } from "../closeout/traceWords.ts";
import type { KeptEvent } from "../model/tables.ts";
import type { WayLandmark } from "../plant/fiberWay.ts";
import type { Plant } from "../plant/plant.ts";
import type { Subject } from "./rule.ts";

/** What a finding about a landmark of a trace is about: the trace, what stands there, and the event where it shows. */
export function landmarkSubjects(traceId: string, { row }: WayLandmark, event?: KeptEvent): readonly Subject[] {
  return [
    { table: "trace", id: traceId },
    { table: row.table, id: row.id },
    ...(event ? [{ table: "traceEvent" as const, id: event.id }] : []),
  ];
}

/** What a finding about an event of a trace is about: the trace, the event, the pole the light passed last; and the place in words. */
export function placeTold(plant: Plant, on: TraceOnRoute, { id, traceId, atM }: KeptEvent) {
  const place = placeAt(plant, on, atM);
  const subjects: Subject[] = [
    { table: "trace", id: traceId },
    { table: "traceEvent", id },
  ];
  if (place) subjects.push({ table: "pole", id: place.pastPoleId });
  return { subjects, where: place ? placeName(plant, place) : "off the strand" };
}

/** The fiber of a trace at the head of a sentence: `Fiber 13 of cable C1 at 1550 nm`. */
export function fiberAtWavelength(plant: Plant, traceId: string): string {
  const trace = plant.rowOf("trace", traceId);
  const name = fiberName(plant, trace);
  return `${name.charAt(0).toUpperCase()}${name.slice(1)} at ${Math.round(trace.wavelengthNm)} nm`;
}
