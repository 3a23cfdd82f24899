import { type RefObject, useEffect, useState } from "react";
import { useSession } from "../app/useSession.ts";
import { giveUp } from "../tools/carry.ts";
import { gripAt } from "../tools/grip.ts";
import { openName } from "../tools/inPlace.ts";
import { carryOn, finish, type Gesture } from "./gesture.ts";
import { hitAll, hitFinding } from "./hitTest.ts";
import type { Picture } from "./paint.ts";
import { useLatest } from "./useLatest.ts";
import { zoomAbout } from "./viewport.ts";

type Marquee = Extract<Gesture, { kind: "box" }>;

/** Mouse, pen and wheel on the diagram; answers with the box being drawn, if any. */
export function usePointer(ground: RefObject<HTMLElement | null>, picture: Picture): Marquee | null {
  const session = useSession();
  const [box, setBox] = useState<Marquee | null>(null);
  const latest = useLatest(picture);

  useEffect(() => {
    const element = ground.current;
    if (!element) return;
    let gesture: Gesture | null = null;
    let isSpaceHeld = false;
    const place = (event: MouseEvent): readonly [number, number] => {
      const frame = element.getBoundingClientRect();
      return [event.clientX - frame.x, event.clientY - frame.y];
    };
    const setGesture = (next: Gesture | null): void => {
      gesture = next;
      setBox(next?.kind === "box" ? next : null);
      element.classList.toggle("is-panning", next?.kind === "pan");
    };
    const handlers = {
      pointerdown(event: PointerEvent) {
        if (event.button > 1 || !isOnGround(event)) return;
        const [x, y] = place(event);
        const isPan = event.button === 1 || isSpaceHeld;
        if (event.button === 1) event.preventDefault();
        element.setPointerCapture(event.pointerId);
        const isBox = event.shiftKey && !isPan;
        const isTool = isPan || isBox || session.view.getState().measure !== null;
        const grip = isTool ? null : gripAt(session, latest.current, x, y);
        setGesture({ kind: "press", x, y, isPan, isBox, grip });
      },
      pointermove(event: PointerEvent) {
        const [x, y] = place(event);
        if (gesture) setGesture(carryOn(session, latest.current, gesture, [x, y], event));
        else hoverAt(x, y);
      },
      pointerup(event: PointerEvent) {
        if (gesture) finish(session, latest.current, gesture, event);
        setGesture(null);
      },
      pointercancel() {
        giveUp(session);
        setGesture(null);
      },
      dblclick(event: MouseEvent) {
        if (!isOnGround(event)) return;
        const [x, y] = place(event);
        const ref = hitAll(latest.current, x, y)[0];
        if (ref && !session.view.getState().measure) openName(session, ref);
      },
      pointerleave: () => session.view.setState({ hover: null }),
      wheel(event: WheelEvent) {
        event.preventDefault();
        const [x, y] = place(event);
        const lines = event.deltaMode === 1 ? event.deltaY * 16 : event.deltaY;
        const factor = Math.exp(-Math.max(-240, Math.min(240, lines)) * 0.0022);
        session.view.setState((state) => ({ viewport: zoomAbout(state.viewport, x, y, factor) }));
      },
      keydown(event: KeyboardEvent) {
        if (event.key !== " " || !isOnGround(event)) return;
        event.preventDefault();
        isSpaceHeld = true;
        element.classList.add("is-ready-to-pan");
      },
      keyup(event: KeyboardEvent) {
        if (event.key !== " ") return;
        isSpaceHeld = false;
        element.classList.remove("is-ready-to-pan");
      },
    };
    const hoverAt = (x: number, y: number): void => {
      const isOnFinding = hitFinding(latest.current, x, y) !== null;
      const hover = isOnFinding ? null : (hitAll(latest.current, x, y)[0] ?? null);
      element.classList.toggle("is-over", isOnFinding || hover !== null);
      if (session.view.getState().hover !== hover) session.view.setState({ hover });
    };
    const stop = new AbortController();
    for (const [name, handler] of Object.entries(handlers)) {
      element.addEventListener(name, handler as EventListener, { signal: stop.signal, passive: false }); // each handler is typed by its own name above
    }
    return () => stop.abort();
  }, [ground, session, latest]);
  return box;
}

/** Whether an event is for the ground, which holds the pointer once it is pressed: what lies over it keeps its own clicks and keys. */
function isOnGround({ target, currentTarget }: Event): boolean {
  if (target === currentTarget) return true;
  return target instanceof Element && target.closest("[data-diagram], [data-adding]") !== null;
}
