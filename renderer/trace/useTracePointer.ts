import { type RefObject, useEffect } from "react";
import { placeAt } from "../../core/closeout/traceOnRoute.ts";
import { refKey } from "../app/ref.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { useLatest } from "../canvas/useLatest.ts";
import { type ShownTrace, traceLines } from "./shownTrace.ts";
import { fiberAtX, fiberX, panTrace, zoomTrace } from "./traceFrame.ts";
import { chooseLine, putMark, setTraces } from "./traceHand.ts";
import type { CursorName } from "./traceView.ts";

/** Farther than this a press is a drag; nearer than that it is on a line, px. */
const [dragPx, nearPx] = [4, 7];

type Gesture =
  | { readonly kind: "press"; readonly x: number; readonly y: number; readonly mark: CursorName | null }
  | { readonly kind: "pan"; readonly x: number; readonly y: number }
  | { readonly kind: "carry"; readonly mark: CursorName };

/** Mouse, pen and wheel on the traces: a drag on a mark carries it, beside one it moves the drawing; a click chooses an event or puts the held mark. */
export function useTracePointer(paper: RefObject<HTMLElement | null>, shown: ShownTrace): void {
  const session = useSession();
  const latest = useLatest(shown);
  useEffect(() => {
    const element = paper.current;
    if (!element) return undefined;
    let gesture: Gesture | null = null;
    const place = (event: MouseEvent): readonly [number, number] => {
      const box = element.getBoundingClientRect();
      return [event.clientX - box.x, event.clientY - box.y];
    };
    const handlers = {
      pointerdown(event: PointerEvent) {
        if (event.button > 1) return;
        const [x, y] = place(event);
        if (event.button === 1) event.preventDefault();
        element.setPointerCapture(event.pointerId);
        gesture = { kind: "press", x, y, mark: event.button === 1 ? null : markUnder(session, x) };
      },
      pointermove(event: PointerEvent) {
        const [x, y] = place(event);
        if (gesture) gesture = carryOn(session, gesture, [x, y]);
        else hoverAt(session, latest.current, x);
      },
      pointerup(event: PointerEvent) {
        const [x] = place(event);
        if (gesture?.kind === "press") click(session, latest.current, x);
        gesture = null;
      },
      pointercancel() {
        gesture = null;
      },
      pointerleave() {
        if (gesture) return;
        setTraces(session, { underM: null });
        session.view.setState({ hover: null });
      },
      wheel(event: WheelEvent) {
        event.preventDefault();
        const lines = event.deltaMode === 1 ? event.deltaY * 16 : event.deltaY || event.deltaX;
        const factor = Math.exp(-Math.max(-240, Math.min(240, lines)) * 0.0022);
        const { frame } = session.view.getState().traces;
        const [along, up] = event.altKey ? [1, factor] : [factor, event.shiftKey ? 1 : Math.sqrt(factor)];
        setTraces(session, { frame: zoomTrace(frame, place(event), along, up) });
      },
    };
    const listeners = Object.entries(handlers) as [keyof typeof handlers, (event: Event) => void][]; // entries widen the event of each handler
    for (const [name, listen] of listeners) element.addEventListener(name, listen, { passive: false });
    return () => {
      for (const [name, listen] of listeners) element.removeEventListener(name, listen);
    };
  }, [paper, session, latest]);
}

function markUnder(session: Session, x: number): CursorName | null {
  const { frame, a, b } = session.view.getState().traces;
  const isNear = (atM: number | null) => atM !== null && Math.abs(fiberX(frame, atM) - x) <= nearPx;
  return isNear(b) ? "b" : isNear(a) ? "a" : null;
}

function carryOn(session: Session, gesture: Gesture, [x, y]: readonly [number, number]): Gesture {
  const { frame } = session.view.getState().traces;
  if (gesture.kind === "press") {
    if (Math.hypot(x - gesture.x, y - gesture.y) < dragPx) return gesture;
    if (gesture.mark !== null) return carryOn(session, { kind: "carry", mark: gesture.mark }, [x, y]);
  }
  if (gesture.kind === "carry") {
    putMark(session, gesture.mark, fiberAtX(frame, x));
    return gesture;
  }
  setTraces(session, { frame: panTrace(frame, x - gesture.x, y - gesture.y) });
  return { kind: "pan", x, y };
}

/** The place under the hand is shown on the diagram as the pole it is at. */
function hoverAt(session: Session, { on, trace }: ShownTrace, x: number): void {
  const { frame } = session.view.getState().traces;
  const underM = fiberAtX(frame, x);
  setTraces(session, { underM });
  if (!on) return;
  const atM = (trace.fromEnd === "far" ? on.way.lengthM - underM : underM) + on.match.leadM;
  const isInside = underM >= 0 && underM <= on.way.lengthM;
  const place = isInside ? placeAt(openRouteOf(session).plant, on, atM) : null;
  session.view.setState({ hover: place && refKey("pole", place.pastPoleId) });
}

function click(session: Session, shown: ShownTrace, x: number): void {
  const { frame, held } = session.view.getState().traces;
  const lines = traceLines(openRouteOf(session).plant, shown);
  const near = lines
    .map((line) => ({ line, offPx: Math.abs(fiberX(frame, line.hubM) - x) }))
    .filter((one) => one.offPx <= nearPx)
    .sort((a, b) => a.offPx - b.offPx)[0];
  if (near) chooseLine(session, shown, near.line);
  else putMark(session, held, fiberAtX(frame, x));
}
