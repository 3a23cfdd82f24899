import { openMoveTrials } from "../../core/edits/moveTrial.ts";
import { portsOf } from "../../core/plant/terminalView.ts";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import { chooseAndShow } from "../app/look.ts";
import { refKey } from "../app/ref.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../app/session.ts";
import type { BalanceSpot, BalanceView } from "./balanceView.ts";
import { sentence, spotWords, trialWords } from "./tell.ts";
import { balanceWords } from "./words.ts";

/** Changes what the eye and hand are at in the balance. */
export function setBalance({ view }: Session, change: Partial<BalanceView>): void {
  view.setState(({ balance }) => ({ balance: { ...balance, ...change } }));
}

/** Goes to a port: it is told, and its unit or terminal is chosen on the diagram too. */
export function goToPort(session: Session, spot: BalanceSpot): void {
  const { plant } = openRouteOf(session);
  setBalance(session, { spot });
  const [dropId] = dropsAt(session, spot);
  const ref =
    dropId === undefined
      ? refKey("terminal", spot.terminalId)
      : refKey("livingUnit", plant.rowOf("drop", dropId).livingUnitId);
  chooseAndShow(session, [ref]);
  tell(session, spotWords(plant, spot, unitsOf(session.store.get())));
}

/** Drops on a port. */
export function dropsAt(session: Session, { terminalId, port }: BalanceSpot): readonly string[] {
  return portsOf(openRouteOf(session).plant, terminalId)[port - 1]?.dropIds ?? [];
}

/** Marks the drops of a port to go together with those marked already, or marks them no longer. */
export function toggleMark(session: Session, spot: BalanceSpot): void {
  const dropIds = dropsAt(session, spot);
  const { marked } = session.view.getState().balance;
  if (dropIds.length === 0) {
    tell(session, balanceWords.nobodyThere);
    return;
  }
  const isMarked = dropIds.every((id) => marked.includes(id));
  const others = marked.filter((id) => !dropIds.includes(id));
  const next = isMarked ? others : [...others, ...dropIds];
  setBalance(session, { marked: next });
  tell(session, balanceWords.marked(next.length));
}

/**
 * Takes up the marked drops, or those of the port where none is marked; false, with the reason said, where nothing can be moved now.
 */
export function takeUp(session: Session, spot: BalanceSpot): boolean {
  const { marked } = session.view.getState().balance;
  const own = dropsAt(session, spot);
  const dropIds = marked.length > 0 && (own.length === 0 || own.some((id) => marked.includes(id))) ? marked : own;
  const reason = working(session) ?? (dropIds.length === 0 ? balanceWords.nobodyThere : null);
  if (reason !== null) {
    tell(session, reason);
    return false;
  }
  const trial = openMoveTrials(openRouteOf(session).route, dropIds);
  setBalance(session, { marked: dropIds, hand: { dropIds, trial, target: null }, evenBy: null });
  tell(session, balanceWords.carrying(dropIds.length));
  return true;
}

/** Carries what is in the hand over a terminal, or over none; what the move would come to is told at once. */
export function carryOver(session: Session, terminalId: string | null): void {
  const { hand } = session.view.getState().balance;
  if (!hand || (hand.target?.terminalId ?? null) === terminalId) return;
  const target = terminalId === null ? null : { terminalId, trial: hand.trial(terminalId) };
  setBalance(session, { hand: { ...hand, target } });
  const open = openRouteOf(session);
  if (target) tell(session, sentence(trialWords(open.plant, target, unitsOf(open))));
}

/**
 * Lets go over the terminal the hand is at: one edit, or the reason why not.
 *
 * @param isHeldOn  whether what is refused stays in the hand, so that another terminal can be tried
 */
export async function letGo(session: Session, isHeldOn: boolean): Promise<void> {
  const { hand } = session.view.getState().balance;
  if (!hand) return;
  const { target, dropIds } = hand;
  if (!target || target.trial.kind === "refused") {
    if (!isHeldOn) setBalance(session, { hand: null });
    tell(session, target?.trial.kind === "refused" ? target.trial.what : balanceWords.putBack);
    return;
  }
  const { terminalId, trial } = target;
  const [first] = trial.drops;
  setBalance(session, { hand: null, marked: [], spot: first ? { terminalId, port: first.port } : null });
  await runCommand(session, "drops.move", { dropIds, terminalId });
}

/** Puts back what is in the hand, or marks nothing any longer; nothing has changed. False where there was neither. */
export function putBack(session: Session): boolean {
  const { hand, marked } = session.view.getState().balance;
  if (!hand && marked.length === 0) return false;
  setBalance(session, hand ? { hand: null } : { marked: [] });
  tell(session, hand ? balanceWords.putBack : balanceWords.marked(0));
  return true;
}

/** Holds one port more or fewer of a terminal for whoever comes later. */
export async function reserveMore(session: Session, terminalId: string, step: 1 | -1): Promise<void> {
  const reason = working(session);
  if (reason !== null) return tell(session, reason);
  const { reservedPortCount } = openRouteOf(session).plant.rowOf("terminal", terminalId);
  if (reservedPortCount + step < 0) return tell(session, balanceWords.noneReserved);
  await runCommand(session, "terminal.reserve", { terminalId, reservedPortCount: reservedPortCount + step });
}
