import type { KeptEvent, KeptTrace } from "../model/tables.ts";
import { shownEvents } from "../traces/shownEvents.ts";
import type { Trace } from "../traces/trace.ts";

/** What of a reflectometer's file the route keeps in rows; who it is of and who brought it are told beside it. */
export type TraceRead = Pick<
  KeptTrace,
  "wavelengthNm" | "takenIso" | "groupIndex" | "pulseNs" | "spacingM" | "totalLossDb" | "returnLossDb"
> & { readonly events: readonly Omit<KeptEvent, "id" | "traceId">[] };

/** Where a file does not tell: usual ones, common practice, no source. */
const usual = { groupIndex: 1.468, pulseNs: 100, spacingM: 1, wavelengthNm: 1550 };

/**
 * What of a file is kept in rows. What it does not tell stands at what is usual; its damages tell which that is.
 *
 * @param takenIso when it was taken, as text: core has no calendar; empty where it does not tell
 */
export function traceRead(trace: Trace, takenIso: string): TraceRead {
  const { fixed, general, link, points } = trace;
  const over0 = (figure: number | undefined, otherwise: number) =>
    figure !== undefined && figure > 0 && Number.isFinite(figure) ? figure : otherwise;
  const told = (figure: number | undefined) => (figure === undefined || figure === 0 ? null : figure);
  return {
    wavelengthNm: over0(fixed?.wavelengthNm, over0(general?.wavelengthNm, usual.wavelengthNm)),
    takenIso,
    groupIndex: over0(fixed?.groupIndex, usual.groupIndex),
    pulseNs: over0(fixed?.pulseWidthNs, usual.pulseNs),
    spacingM: over0(points?.spacingM, usual.spacingM),
    totalLossDb: told(link?.totalLossDb),
    returnLossDb: told(link?.returnLossDb),
    events: shownEvents(trace).map((event, index) => ({ ...event, number: index + 1 })),
  };
}
