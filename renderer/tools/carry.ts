import { planeDistanceM } from "../../core/plant/geometry.ts";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import { openRouteOf, type Session, tell } from "../app/session.ts";
import type { Picture } from "../canvas/paint.ts";
import { groundAt } from "../canvas/viewport.ts";
import { dropHandAt } from "./dropHand.ts";
import { type Grip, gripRef } from "./grip.ts";
import type { Hand } from "./hand.ts";
import { lockedWords } from "./kinds.ts";
import { nearestPoleSnap } from "./poleSnap.ts";
import { terminalHandAt } from "./terminalHand.ts";

/** Takes hold of a thing; false, with the reason said, where it may not be moved. */
export function takeHold(session: Session, grip: Grip): boolean {
  const { kinds, selection } = session.view.getState();
  const reason = working(session) ?? lockedWords(kinds, grip.table);
  if (reason !== null) tell(session, reason);
  else if (grip.table !== "drop" && !selection.includes(gripRef(grip)))
    session.view.setState({ selection: [gripRef(grip)] });
  return reason === null;
}

/** Moves what the hand has hold of; nothing is changed until it is let go. */
export function carry(
  session: Session,
  picture: Picture,
  grip: Grip,
  [xPx, yPx]: readonly [number, number],
  isSnapping: boolean,
): void {
  const { exact, hand } = session.view.getState();
  // while a number is typed, the number leads
  if (exact) return;
  session.view.setState({ hand: handAt(session, picture, grip, hand, [xPx, yPx], isSnapping), hover: null });
}

function handAt(
  session: Session,
  picture: Picture,
  grip: Grip,
  former: Hand | null,
  [xPx, yPx]: readonly [number, number],
  isSnapping: boolean,
): Hand {
  const { plant } = openRouteOf(session);
  if (grip.table === "drop") return dropHandAt(picture, plant, grip.id, xPx, yPx);
  const place = [xPx - grip.dxPx, yPx - grip.dyPx] as const;
  if (grip.table === "pole") {
    const free = groundAt(picture.view, place[0], place[1]);
    const snap = isSnapping ? nearestPoleSnap(plant, grip.id, free, picture.view.pxPerM) : null;
    const { eastM, northM } = snap ?? free;
    return { kind: "pole", poleId: grip.id, eastM, northM, snap, refusal: null };
  }
  const spanId = former?.kind === "terminal" ? former.spanId : plant.rowOf("terminal", grip.id).spanId;
  return terminalHandAt(picture, plant, grip.id, spanId, place, isSnapping);
}

/** Lets go: one edit where the thing may be there, else the reason why not. The preview stays until the edit is answered. */
export async function letGo(session: Session): Promise<void> {
  const { hand, exact } = session.view.getState();
  if (!hand || exact) return;
  if (hand.refusal !== null) tell(session, hand.refusal);
  else await runHand(session, hand);
  // what has been taken hold of meanwhile stays in the hand
  session.view.setState((now) => (now.hand === hand ? { hand: null } : {}));
}

/** Gives a drag up; nothing has changed. */
export function giveUp(session: Session): boolean {
  const { hand, exact } = session.view.getState();
  if (!hand && !exact) return false;
  session.view.setState({ hand: null, exact: null });
  return true;
}

async function runHand(session: Session, hand: Hand): Promise<void> {
  const { plant } = openRouteOf(session);
  if (hand.kind === "terminal") {
    const { terminalId, spanId, offsetM } = hand;
    const present = plant.rowOf("terminal", terminalId);
    if (present.spanId === spanId && Math.abs(present.offsetM - offsetM) < 1e-9) return;
    await runCommand(session, "terminal.move", { terminalId, spanId, offsetM });
  } else if (hand.kind === "pole") {
    const { poleId, eastM, northM } = hand;
    if (planeDistanceM(plant.rowOf("pole", poleId), hand) > 0)
      await runCommand(session, "pole.move", { poleId, eastM, northM });
  } else if (hand.target) {
    const present = plant.rowOf("drop", hand.dropId);
    const { terminalId, port } = hand.target;
    if (present.terminalId !== terminalId || present.port !== port)
      await runCommand(session, "drop.move", { dropId: hand.dropId, terminalId, port });
  }
}
