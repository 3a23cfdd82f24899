import type { KeptEvent, KeptTrace } from "../model/tables.ts";
import { type FiberWay, fiberWay, type WayLandmark } from "../plant/fiberWay.ts";
import { type FiberPlace, placeOnFiber } from "../plant/placeOnFiber.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { type BreakEstimate, breakPlace } from "./breakPlace.ts";
import { type MatchRule, matchTrace, type TraceMatch } from "./matchTrace.ts";

/** A kept trace held against the fiber it is of. */
export type TraceOnRoute = {
  readonly way: FiberWay;
  readonly match: TraceMatch<WayLandmark, KeptEvent>;
  readonly break: BreakEstimate | null;
};

/** Group index and excess of fiber over sheath, as one standard deviation: common practice, no source. */
const scaleFrac = 0.01;

/** m/s, exact. */
const lightMPerS = 299_792_458;

/** A kept trace against its fiber; null where nobody has said whose it is, or the fiber has no way. */
export const traceOnRoute = defineQuery("trace-on-route", (plant, traceId): TraceOnRoute | null => {
  const trace = plant.rowOf("trace", traceId);
  const { cableId, fiber } = trace;
  if (cableId === null || fiber === null) return null;
  const way = fiberWay(plant, { cableId, fiber }, trace.fromEnd);
  if (!way) return null;
  const rule = matchRule(plant, trace);
  const match = matchTrace(way.landmarks, eventsOf(plant, traceId), rule);
  const sharpness = { pulseWidthNs: trace.pulseNs, groupIndex: trace.groupIndex, spacingM: trace.spacingM };
  return { way, match, break: breakPlace(match, rule, sharpness) };
});

/** Events of a trace by distance. */
export const eventsOf = defineQuery("trace-events", (plant, traceId): readonly KeptEvent[] =>
  plant
    .where("traceEvent", "traceId", traceId)
    .map((id) => plant.rowOf("traceEvent", id))
    .sort((a, b) => a.atM - b.atM || a.number - b.number),
);

/** A coil at a terminal half as long again, or half left out, is one standard deviation. */
function matchRule(plant: Plant, { pulseNs, groupIndex, spacingM, leadM }: KeptTrace): MatchRule {
  const pulseM = (lightMPerS * pulseNs * 1e-9) / (2 * groupIndex);
  return { slackM: Math.hypot(plant.settings().accessSlackM / 2, pulseM / 2, spacingM / 2), scaleFrac, leadM };
}

/**
 * Where along its fiber a distance of a trace is, m from the near end: by the landmarks found before and behind it, so that coils not as
 * drawn shift nothing but their own section.
 */
function fiberAt({ match, way }: Pick<TraceOnRoute, "match" | "way">, atM: number): number {
  const seen = match.matches.map(({ landmark, event }) => ({
    atM: event?.atM ?? match.leadM,
    fiberM: landmark.fiberM,
  }));
  const before = seen.findLast((one) => one.atM <= atM);
  const behind = seen.find((one) => one.atM > atM);
  if (!before) return atM - match.leadM;
  if (!behind || before.fiberM >= way.lengthM) return before.fiberM + atM - before.atM;
  return before.fiberM + ((atM - before.atM) / (behind.atM - before.atM)) * (behind.fiberM - before.fiberM);
}

/** The place on the strand of a distance of a trace; null where its fiber has none. */
export function placeAt(plant: Plant, on: TraceOnRoute, atM: number): FiberPlace | null {
  return placeOnFiber(plant, on.way, fiberAt(on, atM));
}

/**
 * Traces of one fiber, the one asked about too, that stand: the latest from each end at each wavelength. One told by the cable it is
 * spliced on to is of the same fiber.
 */
export const standingTraces = defineQuery("standing-traces", (plant, traceId): readonly string[] => {
  const { cableId, fiber } = plant.rowOf("trace", traceId);
  if (cableId === null || fiber === null) return [];
  const legs = fiberWay(plant, { cableId, fiber }, "feed")?.legs ?? [{ cableId, fiber }];
  const ids = legs.flatMap((leg) => plant.whereAll("trace", { cableId: leg.cableId, fiber: String(leg.fiber) }));
  const latest = new Map<string, KeptTrace>();
  for (const id of ids) {
    const one = plant.rowOf("trace", id);
    const key = `${one.fromEnd} ${one.wavelengthNm}`;
    const other = latest.get(key);
    if (!other || isLater(one, other)) latest.set(key, one);
  }
  return [...latest.values()].map((one) => one.id).sort();
});

function isLater(one: KeptTrace, than: KeptTrace): boolean {
  return one.takenIso > than.takenIso || (one.takenIso === than.takenIso && one.atIso > than.atIso);
}

/** The trace of the same fiber and wavelength from its other end; null where none stands. */
export function otherWay(plant: Plant, trace: KeptTrace): KeptTrace | null {
  const others = standingTraces(plant, trace.id).map((id) => plant.rowOf("trace", id));
  return (
    others.find((one) => one.fromEnd !== trace.fromEnd && Math.abs(one.wavelengthNm - trace.wavelengthNm) <= 20) ?? null
  );
}
