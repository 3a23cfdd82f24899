import { terminalBalance } from "../../core/plant/balance.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { carryOver, goToPort, letGo, putBack, reserveMore, takeUp, toggleMark } from "./balanceHand.ts";
import type { BalanceSpot } from "./balanceView.ts";

/** A key as the list of terminals takes it. */
type Press = { readonly key: string; readonly isShift: boolean; readonly isMod: boolean };

/**
 * What a key does in the list of terminals.
 *
 * @param order      terminals from the top down
 * @param pageCount  terminals in sight
 * @returns null where the key is none of the list's
 */
export function balanceKey(
  session: Session,
  order: readonly string[],
  pageCount: number,
  press: Press,
): (() => void) | null {
  const { hand, spot: present, marked } = session.view.getState().balance;
  const [first] = order;
  const spot = present && order.includes(present.terminalId) ? present : first ? { terminalId: first, port: 1 } : null;
  if (!spot) return null;
  const { key, isShift, isMod } = press;
  const rows = stepOf(key, isMod, pageCount, order.length);
  if (hand) {
    const at = hand.target?.terminalId ?? spot.terminalId;
    if (rows !== null) return () => carryOver(session, moved(order, at, rows));
    if (key === "Enter" || key === " ") return () => void letGo(session, true);
    return key === "Escape" ? () => void putBack(session) : null;
  }
  if (rows !== null) return () => goToPort(session, onFace(session, moved(order, spot.terminalId, rows), spot.port));
  const ports = portStepOf(key, isMod);
  if (ports !== null) {
    const next = onFace(session, spot.terminalId, spot.port + ports);
    return () => {
      if (isShift) for (const one of unmarked(session, [spot, next])) toggleMark(session, one);
      goToPort(session, next);
    };
  }
  if (isMod) return null;
  if (key === " ") return () => toggleMark(session, spot);
  if (key === "Enter") return () => void takeUp(session, spot);
  if (key === "+" || key === "=") return () => void reserveMore(session, spot.terminalId, 1);
  if (key === "-") return () => void reserveMore(session, spot.terminalId, -1);
  return key === "Escape" && marked.length > 0 ? () => void putBack(session) : null;
}

function stepOf(key: string, isMod: boolean, pageCount: number, count: number): number | null {
  if (key === "ArrowDown") return 1;
  if (key === "ArrowUp") return -1;
  if (key === "PageDown") return pageCount;
  if (key === "PageUp") return -pageCount;
  if (isMod && key === "Home") return -count;
  return isMod && key === "End" ? count : null;
}

function portStepOf(key: string, isMod: boolean): number | null {
  if (key === "ArrowRight") return 1;
  if (key === "ArrowLeft") return -1;
  if (isMod) return null;
  if (key === "Home") return Number.NEGATIVE_INFINITY;
  return key === "End" ? Number.POSITIVE_INFINITY : null;
}

function moved(order: readonly string[], terminalId: string, step: number): string {
  const at = order.indexOf(terminalId);
  return order[Math.max(0, Math.min(order.length - 1, at + step))] ?? terminalId;
}

/** A port of a terminal, the nearest its face has. */
function onFace(session: Session, terminalId: string, port: number): BalanceSpot {
  const { ports } = terminalBalance(openRouteOf(session).plant, terminalId);
  return { terminalId, port: Math.max(1, Math.min(ports.length, port)) };
}

/** Ports with drops that are not marked yet. */
function unmarked(session: Session, spots: readonly BalanceSpot[]): readonly BalanceSpot[] {
  const { plant } = openRouteOf(session);
  const { marked } = session.view.getState().balance;
  return spots.filter(({ terminalId, port }) => {
    const dropIds = terminalBalance(plant, terminalId).ports[port - 1]?.dropIds ?? [];
    return dropIds.length > 0 && !dropIds.every((id) => marked.includes(id));
  });
}
