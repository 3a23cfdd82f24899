import { placeAt } from "../../core/closeout/traceOnRoute.ts";
import { cablePath } from "../../core/plant/cablePath.ts";
import type { FiberWay } from "../../core/plant/fiberWay.ts";
import { fiberAtPlace } from "../../core/plant/placeOnFiber.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { chooseAndShow } from "../app/look.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { openRouteOf, type Session, tell } from "../app/session.ts";
import { linePlace, lineTitle } from "./lineTitle.ts";
import { type ShownTrace, shownTrace, type TraceLine, traceLines } from "./shownTrace.ts";
import { traceFrameWith } from "./traceFrame.ts";
import type { CursorName, TraceView } from "./traceView.ts";

/** Changes what the eye and hand are at in the traces. */
export function setTraces({ view }: Session, change: Partial<TraceView>): void {
  view.setState(({ traces }) => ({ traces: { ...traces, ...change } }));
}

/** Traces by cable, fiber, end and wavelength; those of no fiber first, since they wait for a person. */
export function tracesInOrder({ route, plant }: OpenRoute): readonly string[] {
  const name = (cableId: string | null) => (cableId === null ? "" : (plant.row("cable", cableId)?.name ?? ""));
  return [...route.trace.values()]
    .sort(
      (a, b) =>
        name(a.cableId).localeCompare(name(b.cableId), "en", { numeric: true }) ||
        (a.fiber ?? 0) - (b.fiber ?? 0) ||
        a.fromEnd.length - b.fromEnd.length ||
        a.wavelengthNm - b.wavelengthNm ||
        (a.takenIso < b.takenIso ? -1 : 1),
    )
    .map((one) => one.id);
}

/** The trace told about now; null where there is none. */
export function traceNow(open: OpenRoute, traceId: string | null): ShownTrace | null {
  const wanted = traceId !== null && open.route.trace.has(traceId) ? traceId : tracesInOrder(open)[0];
  return wanted === undefined ? null : shownTrace(open.plant, wanted);
}

/** The row on the diagram that a line of the list stands for: what is drawn there, else the pole the light passed last. */
export function refOfLine(plant: Plant, { on }: ShownTrace, { landmark, event }: TraceLine): RefKey | null {
  if (landmark && (landmark.row.table === "terminal" || landmark.row.table === "closure"))
    return refKey(landmark.row.table, landmark.row.id);
  if (!on) return null;
  const atM = event?.atM ?? (landmark ? landmark.fiberM + on.match.leadM : null);
  const place = atM === null ? null : placeAt(plant, on, atM);
  return place && refKey("pole", place.pastPoleId);
}

/** Chooses what a line stands for, here and on the diagram, and puts the held mark there. */
export function chooseLine(session: Session, shown: ShownTrace, line: TraceLine): void {
  const { plant } = openRouteOf(session);
  const { held, frame } = session.view.getState().traces;
  setTraces(session, { [held]: line.hubM, frame: traceFrameWith(frame, line.hubM) });
  const ref = refOfLine(plant, shown, line);
  if (ref) chooseAndShow(session, [ref]);
  const place = linePlace(plant, shown, line);
  tell(session, [lineTitle(plant, shown, line), ...(place ? [place] : [])].join(", "));
}

/** The line a row of the diagram is told on; null where the trace shows nothing of it. */
export function lineOfRef(plant: Plant, shown: ShownTrace, ref: RefKey): TraceLine | null {
  const lines = traceLines(plant, shown);
  const { table, id } = splitRef(ref);
  const own = lines.find((one) => one.landmark?.row.table === table && one.landmark.row.id === id);
  return own ?? lines.find((one) => one.landmark === null && refOfLine(plant, shown, one) === ref) ?? null;
}

/** Where a row of the diagram is along the fiber, m from the hub; null where the fiber does not pass it. */
export function hubMOfRef(plant: Plant, { on }: ShownTrace, ref: RefKey): number | null {
  if (!on) return null;
  const { table, id } = splitRef(ref);
  const way: FiberWay = { ...on.way, fromEnd: "feed" };
  switch (table) {
    case "terminal":
    case "closure":
    case "slack": {
      const row = plant.row(table, id);
      return row ? fiberAtPlace(plant, way, row.spanId, row.offsetM) : null;
    }
    case "pole": {
      for (const { cableId } of way.legs)
        for (const { spanId, inPoleId, outPoleId } of cablePath(plant, cableId).steps) {
          if (inPoleId !== id && outPoleId !== id) continue;
          const { fromPoleId, lengthM } = plant.rowOf("span", spanId);
          return fiberAtPlace(plant, way, spanId, fromPoleId === id ? 0 : lengthM);
        }
      return null;
    }
    default:
      return null;
  }
}

/** Puts a mark down. */
export function putMark(session: Session, name: CursorName, fiberM: number): void {
  setTraces(session, { [name]: fiberM, held: name });
}
