import type { Trace, TraceEvent } from "./trace.ts";

/** An event as it is held against the drawing. */
export type TraceShown = {
  readonly number: number;
  readonly atM: number;
  readonly lossDb: number;
  readonly reflectanceDb: number | null;
  /** Of the fiber before it, dB/km. */
  readonly slopeDbPerKm: number;
  readonly reflects: boolean;
  readonly ends: boolean;
};

/**
 * Events of a trace by distance. The last one ends the fiber, whether or not the instrument marks it so (many mark no end, and nothing is
 * told behind it), unless it is marked as out of range.
 *
 * @source code of an event: 1 and 2 reflect, O second is out of range: the open specification; that the last is the end: seen in real files
 */
export function shownEvents({ events }: Pick<Trace, "events">): readonly TraceShown[] {
  const inOrder = [...events].sort((a, b) => a.distanceM - b.distanceM || a.number - b.number);
  return inOrder.map((event, index) => ({
    number: event.number,
    atM: event.distanceM,
    lossDb: event.spliceLossDb,
    reflectanceDb: toldReflectance(event),
    slopeDbPerKm: event.slopeDbPerKm,
    reflects: /^[12]/.test(event.code),
    ends: index === inOrder.length - 1 && event.distanceM > 0 && event.code[1] !== "O",
  }));
}

/** Some instruments write 0 where they know none: nothing reflects all light. */
function toldReflectance({ reflectanceDb }: TraceEvent): number | null {
  return reflectanceDb === 0 ? null : reflectanceDb;
}
