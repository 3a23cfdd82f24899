import type { KeptEvent } from "../model/tables.ts";
import type { WayLandmark } from "../plant/fiberWay.ts";
import type { Plant } from "../plant/plant.ts";
import { eventsOf, otherWay, standingTraces, traceOnRoute } from "./traceOnRoute.ts";

/** A place along a fiber with its event in the trace, and in that from the other end where one was taken. */
export type TracedPlace = {
  readonly landmark: WayLandmark;
  readonly event: KeptEvent;
  /** One or two directions, dB. */
  readonly lossesDb: readonly number[];
  /** Strongest told; null where none was. */
  readonly reflectanceDb: number | null;
};

/**
 * Places whose loss a trace shows. The end of the fiber and the instrument's own start show none. Where both directions stand, the places
 * are told by the trace from the hub alone, each with both losses; what only the other shows is told by the other.
 */
export function tracedPlaces(plant: Plant, traceId: string): readonly TracedPlace[] {
  const trace = plant.rowOf("trace", traceId);
  const other = otherWay(plant, trace);
  const across = new Map((other ? ownPlaces(plant, other.id) : []).map((one) => [placeKey(one.landmark), one.event]));
  return ownPlaces(plant, traceId).flatMap(({ landmark, event }) => {
    const opposite = across.get(placeKey(landmark));
    if (opposite && trace.fromEnd === "far") return [];
    const both = opposite ? [event, opposite] : [event];
    const told = both.flatMap((one) => one.reflectanceDb ?? []);
    return [
      {
        landmark,
        event,
        lossesDb: both.map((one) => one.lossDb),
        reflectanceDb: told.length > 0 ? Math.max(...told) : null,
      },
    ];
  });
}

type OwnPlace = { readonly landmark: WayLandmark; readonly event: KeptEvent };

function ownPlaces(plant: Plant, traceId: string): readonly OwnPlace[] {
  const on = traceOnRoute(plant, traceId);
  if (!on) return [];
  const { matches, leadM } = on.match;
  return matches.flatMap(({ landmark, event }) =>
    event === null || event.ends || (event.atM === leadM && event.number === eventsOf(plant, traceId)[0]?.number)
      ? []
      : [{ landmark, event }],
  );
}

function placeKey({ kind, row }: WayLandmark): string {
  return `${kind} ${row.table} ${row.id}`;
}

/** A stretch of fiber before an event, as long as it lies in the fiber and not in a lead. */
export type TracedSection = { readonly event: KeptEvent; readonly lengthM: number; readonly dbPerKm: number };

/** Sections of a trace that lie in its fiber, each with the slope the instrument fitted. */
export function tracedSections(plant: Plant, traceId: string): readonly TracedSection[] {
  const on = traceOnRoute(plant, traceId);
  if (!on) return [];
  const { leadM, matches } = on.match;
  const far = matches.at(-1);
  const farM = far?.landmark === on.way.landmarks.at(-1) ? (far?.event?.atM ?? leadM) : Number.POSITIVE_INFINITY;
  let beforeM = leadM;
  return eventsOf(plant, traceId).flatMap((event) => {
    if (event.atM <= leadM || event.atM > farM) return [];
    const lengthM = event.atM - beforeM;
    beforeM = event.atM;
    return [{ event, lengthM, dbPerKm: event.slopeDbPerKm }];
  });
}

/** Whether a trace stands: no later one of the same fiber, end and wavelength took its place. */
export function isStanding(plant: Plant, traceId: string): boolean {
  return standingTraces(plant, traceId).includes(traceId);
}
