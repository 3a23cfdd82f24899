import { type PointerEvent, type RefObject, useRef } from "react";
import { useSession } from "../app/useSession.ts";
import { carryOver, dropsAt, goToPort, letGo, setBalance, takeUp, toggleMark } from "./balanceHand.ts";
import type { BalanceSpot } from "./balanceView.ts";

/** A press becomes a drag after so many pixels. */
const slackPx = 4;
/** So near an edge the list rolls on, by this much a move. */
const [edgePx, rollPx] = [26, 10];

/** What the pointer does in the list of terminals: a click chooses, Ctrl or Shift with it marks, a drag carries. */
export function useCarrying(area: RefObject<HTMLDivElement | null>) {
  const session = useSession();
  const pressed = useRef<{ readonly x: number; readonly y: number; readonly spot: BalanceSpot } | null>(null);
  const isCarried = useRef(false);

  const down = (event: PointerEvent<HTMLDivElement>): void => {
    const spot = spotUnder(event.target);
    if (event.button !== 0 || !spot) return;
    event.preventDefault();
    area.current?.focus({ preventScroll: true });
    // a carry by keys ends where one clicks
    if (session.view.getState().balance.hand) {
      carryOver(session, spot.terminalId);
      void letGo(session, true);
      return;
    }
    pressed.current = { x: event.clientX, y: event.clientY, spot };
    area.current?.setPointerCapture(event.pointerId);
  };

  const move = (event: PointerEvent<HTMLDivElement>): void => {
    const from = pressed.current;
    if (!from) return;
    if (!isCarried.current) {
      const isFar = Math.hypot(event.clientX - from.x, event.clientY - from.y) > slackPx;
      if (!isFar || dropsAt(session, from.spot).length === 0) return;
      const { marked } = session.view.getState().balance;
      if (!dropsAt(session, from.spot).some((id) => marked.includes(id))) setBalance(session, { marked: [] });
      if (!takeUp(session, from.spot)) {
        pressed.current = null;
        return;
      }
      isCarried.current = true;
    }
    const box = area.current?.getBoundingClientRect();
    if (box && event.clientY > box.bottom - edgePx) area.current?.scrollBy({ top: rollPx });
    if (box && event.clientY < box.top + edgePx * 2) area.current?.scrollBy({ top: -rollPx });
    carryOver(session, terminalUnder(document.elementFromPoint(event.clientX, event.clientY)));
  };

  const end = (event: PointerEvent<HTMLDivElement>): void => {
    const from = pressed.current;
    pressed.current = null;
    if (!from) return;
    if (isCarried.current) {
      isCarried.current = false;
      void letGo(session, false);
      return;
    }
    const isAdded = event.ctrlKey || event.metaKey || event.shiftKey;
    if (isAdded) toggleMark(session, from.spot);
    else setBalance(session, { marked: [] });
    goToPort(session, from.spot);
  };

  const cancel = (): void => {
    pressed.current = null;
    if (isCarried.current) setBalance(session, { hand: null });
    isCarried.current = false;
  };
  return { onPointerDown: down, onPointerMove: move, onPointerUp: end, onPointerCancel: cancel };
}

function terminalUnder(target: EventTarget | null): string | null {
  return target instanceof Element ? (target.closest("[data-terminal]")?.getAttribute("data-terminal") ?? null) : null;
}

/** The port under the pointer; the first of the terminal where it is beside the ports. */
function spotUnder(target: EventTarget | null): BalanceSpot | null {
  const terminalId = terminalUnder(target);
  if (terminalId === null || !(target instanceof Element)) return null;
  const port = Number(target.closest("[data-port]")?.getAttribute("data-port") ?? 1);
  return { terminalId, port };
}
