import type { KeyboardEvent } from "react";
import { formatLength } from "../../core/units/formatLength.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../app/session.ts";
import { type ShownTrace, type TraceLine, traceLines } from "./shownTrace.ts";
import { fiberAtX, fitTrace, type TraceExtent, traceFrameWith, zoomTrace } from "./traceFrame.ts";
import { chooseLine, putMark, setTraces } from "./traceHand.ts";
import { traceWords } from "./words.ts";

/** Keys of the traces: up and down walk from event to event, left and right move the held mark, A and B take the other. */
export function pressOnTrace(session: Session, shown: ShownTrace, extent: TraceExtent, event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const act = actOf(session, shown, extent, event);
  if (!act) return;
  event.preventDefault();
  event.stopPropagation();
  act();
}

function actOf(
  session: Session,
  shown: ShownTrace,
  extent: TraceExtent,
  { key, shiftKey }: Pick<KeyboardEvent, "key" | "shiftKey">,
): (() => void) | null {
  const { frame, held } = session.view.getState().traces;
  const middle = [frame.widthPx / 2, frame.heightPx / 2] as const;
  const stepPx = shiftKey ? 25 : 1;
  switch (key) {
    case "ArrowUp":
      return () => walk(session, shown, -1);
    case "ArrowDown":
      return () => walk(session, shown, 1);
    case "ArrowLeft":
      return () => move(session, -stepPx / frame.pxPerM);
    case "ArrowRight":
      return () => move(session, stepPx / frame.pxPerM);
    case "a":
    case "A":
    case "b":
    case "B": {
      const name = key.toLowerCase() === "a" ? "a" : "b";
      return () => {
        const { [name]: present } = session.view.getState().traces;
        putMark(session, name, present ?? fiberAtX(frame, middle[0]));
        tell(session, traceWords.mark(name));
      };
    }
    case "0":
      return () => setTraces(session, { frame: fitTrace(frame, extent) });
    case "+":
    case "=":
      return () => setTraces(session, { frame: zoomTrace(frame, middle, 1.4, 1) });
    case "-":
      return () => setTraces(session, { frame: zoomTrace(frame, middle, 1 / 1.4, 1) });
    case "Delete":
      return () => setTraces(session, { [held]: null });
    default:
      return null;
  }
}

function move(session: Session, byM: number): void {
  const { held, frame, ...view } = session.view.getState().traces;
  const toM = (view[held] ?? fiberAtX(frame, frame.widthPx / 2)) + byM;
  setTraces(session, { [held]: toM, frame: traceFrameWith(frame, toM) });
  tell(session, `${traceWords.mark(held)} ${formatLength(toM, unitsOf(session.store.get()), "span")}`);
}

function walk(session: Session, shown: ShownTrace, direction: 1 | -1): void {
  const lines = traceLines(openRouteOf(session).plant, shown);
  const { held, ...view } = session.view.getState().traces;
  const atM = view[held];
  const line = atM === null ? lines[0] : nextLine(lines, atM, direction * (shown.trace.fromEnd === "far" ? -1 : 1));
  if (line) chooseLine(session, shown, line);
}

function nextLine(lines: readonly TraceLine[], atM: number, sign: number): TraceLine | undefined {
  const onward = lines.filter((one) => sign * (one.hubM - atM) > 1e-6);
  return onward.reduce<TraceLine | undefined>(
    (best, one) => (!best || sign * (one.hubM - best.hubM) < 0 ? one : best),
    undefined,
  );
}
