import { eventsOf, standingTraces, type TraceOnRoute, traceOnRoute } from "../../core/closeout/traceOnRoute.ts";
import type { KeptEvent, KeptTrace } from "../../core/model/tables.ts";
import type { WayLandmark } from "../../core/plant/fiberWay.ts";
import type { Plant } from "../../core/plant/plant.ts";
import type { Trace } from "../../core/traces/trace.ts";
import type { LaidCurve } from "./curveColumns.ts";
import type { TraceExtent } from "./traceFrame.ts";

/** A trace laid along its fiber: places are fiber from the hub, whatever end it was taken from. */
export type ShownTrace = {
  readonly trace: KeptTrace;
  readonly on: TraceOnRoute | null;
  /** Place of a distance of the instrument, m. */
  readonly hubM: (atM: number) => number;
};

/** A trace as it is laid along its fiber; without a fiber it lies behind its lead. */
export function shownTrace(plant: Plant, traceId: string): ShownTrace | null {
  const trace = plant.row("trace", traceId);
  if (!trace) return null;
  const on = traceOnRoute(plant, traceId);
  const leadM = on?.match.leadM ?? trace.leadM ?? 0;
  const lengthM = on?.way.lengthM ?? 0;
  const isTurned = on !== null && trace.fromEnd === "far";
  return { trace, on, hubM: (atM) => (isTurned ? lengthM - (atM - leadM) : atM - leadM) };
}

/** The trace told about and, where they are wanted, the others of its fiber that stand. */
export function shownTraces(plant: Plant, traceId: string, areOthersShown: boolean): readonly ShownTrace[] {
  const others = areOthersShown ? standingTraces(plant, traceId).filter((id) => id !== traceId) : [];
  return [traceId, ...others].flatMap((id) => shownTrace(plant, id) ?? []);
}

/** The curve of a file where its trace lies along the fiber; null where the file holds none. */
export function laidCurve({ hubM }: ShownTrace, file: Trace): LaidCurve | null {
  const { points } = file;
  if (!points || points.levelsDb.length === 0 || !(points.spacingM > 0)) return null;
  const firstM = hubM(0);
  return { levelsDb: points.levelsDb, firstM, stepM: hubM(points.spacingM) - firstM };
}

/** What one line of the list of a trace tells: an event, a landmark, or both. */
export type TraceLine = {
  readonly key: string;
  /** Fiber from the hub, m. */
  readonly hubM: number;
  readonly event: KeptEvent | null;
  readonly landmark: WayLandmark | null;
  /** untold: of no fiber yet, so that nothing can be said of it. */
  readonly kind: "untold" | "matched" | "missing" | "unmatched" | "break" | "lead" | "beyond";
  /** Further than drawn from the match before it, m; null where nothing is matched. */
  readonly moreM: number | null;
};

/** Events and landmarks of a trace, one a line, by distance from the instrument. */
export function traceLines(plant: Plant, { trace, on, hubM }: ShownTrace): readonly TraceLine[] {
  const events = eventsOf(plant, trace.id);
  const ofEvent = (event: KeptEvent) => ({ key: event.id, hubM: hubM(event.atM), event });
  if (!on) return events.map((event) => ({ ...ofEvent(event), landmark: null, kind: "untold", moreM: null }));
  const { matches, missing, beyond, unmatched, broken, leadM } = on.match;
  const ofLandmark = (landmark: WayLandmark) => ({
    key: `${landmark.kind} ${landmark.row.id}`,
    hubM: trace.fromEnd === "far" ? on.way.lengthM - landmark.fiberM : landmark.fiberM,
    event: null,
    landmark,
    moreM: null,
  });
  const taken = new Set([...matches.map((one) => one.event?.id), ...unmatched.map((one) => one.id), broken?.id]);
  const lines: TraceLine[] = [
    ...matches.map(({ landmark, event, moreM }, index) => ({
      ...ofLandmark(landmark),
      ...(event ? ofEvent(event) : {}),
      kind: "matched" as const,
      moreM: index === 0 ? null : moreM,
    })),
    ...missing.map((one) => ({ ...ofLandmark(one), kind: "missing" as const })),
    ...beyond.map((one) => ({ ...ofLandmark(one), kind: "beyond" as const })),
    ...unmatched.map((one) => ({
      ...ofEvent(one),
      landmark: null,
      kind: one.atM < leadM ? ("lead" as const) : ("unmatched" as const),
      moreM: null,
    })),
    ...(broken ? [{ ...ofEvent(broken), landmark: null, kind: "break" as const, moreM: null }] : []),
    ...events
      .filter((one) => !taken.has(one.id))
      .map((one) => ({ ...ofEvent(one), landmark: null, kind: "lead" as const, moreM: null })),
  ];
  const sign = trace.fromEnd === "far" ? -1 : 1;
  return lines.sort((a, b) => sign * (a.hubM - b.hubM));
}

/** Room under the lowest level of the fiber, dB. */
const underDb = 4;

/** What there is to show of traces and their curves; the noise behind the end of the fiber sets no scale. */
export function extentOf(shown: readonly ShownTrace[], curves: readonly LaidCurve[], plant: Plant): TraceExtent {
  const lasts = shown.map(({ trace, hubM }) => hubM(eventsOf(plant, trace.id).at(-1)?.atM ?? 0));
  const ends = shown.flatMap(({ on, hubM }) => [hubM(0), ...(on ? [0, on.way.lengthM] : [])]);
  const [fromM, toM] = [Math.min(...ends, ...lasts), Math.max(...ends, ...lasts)];
  const inside = shown.map(({ hubM }, index) => [hubM(0), lasts[index] ?? 0].sort((a, b) => a - b));
  let [topDb, bottomDb] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  curves.forEach(({ levelsDb, firstM, stepM }, at) => {
    const [least = 0, most = 0] = inside[at] ?? [];
    levelsDb.forEach((levelDb, index) => {
      const atM = firstM + index * stepM;
      if (atM < least || atM > most) return;
      if (levelDb > topDb) topDb = levelDb;
      if (levelDb < bottomDb) bottomDb = levelDb;
    });
  });
  if (!Number.isFinite(topDb)) [topDb, bottomDb] = [0, -20];
  const roomM = (toM - fromM) * 0.06;
  return { fromM, toM: toM > fromM ? toM + roomM : fromM + 100, topDb: topDb + 1, bottomDb: bottomDb - underDb };
}
