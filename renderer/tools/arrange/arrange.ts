import { type Repeatable, working } from "../../app/actions/action.ts";
import { runCommand } from "../../app/edits.ts";
import { refKey } from "../../app/ref.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../../app/session.ts";
import { lockedWords } from "../kinds.ts";
import { type Arrangement, arrangementOf } from "./arrangement.ts";
import { type ArrangeWay, type Arranging, plainArranging, waysFor } from "./arranging.ts";
import { arrangeWords } from "./words.ts";

/** Takes up arranging: in the way asked for, else the one of last time where it fits what is chosen, else the first that does. */
export function openArranging(session: Session, wanted?: ArrangeWay): void {
  const { selection, arranged } = session.view.getState();
  const former = arranged ?? plainArranging;
  const ways = waysFor(selection);
  const way = wanted ?? (ways.includes(former.way) ? former.way : (ways[0] ?? former.way));
  session.view.setState({ arranging: { ...former, way }, measure: null, adding: null });
}

/** Gives arranging up; nothing has changed. */
export function closeArranging(session: Session): void {
  session.view.setState({ arranging: null });
}

/** What would come of it in this window: also what is locked or not on the ground is told. */
export function arrangementHere(session: Session, asked: Arranging): Arrangement {
  const { selection, kinds, drawnAs } = session.view.getState();
  const open = openRouteOf(session);
  const arrangement = arrangementOf(open.plant, selection, asked, unitsOf(open));
  if (!arrangement.isReady) return arrangement;
  const isOffGround = arrangement.table === "pole" && drawnAs !== "ground";
  const reason = lockedWords(kinds, arrangement.table) ?? (isOffGround ? arrangeWords.groundOnly : null);
  return reason === null ? arrangement : { isReady: false, reason, rows: [] };
}

/** Carries it out as one edit, and keeps it for the next time; false, with the reason said, where it cannot be. */
export async function runArrangement(session: Session, asked: Arranging): Promise<boolean> {
  const arrangement = arrangementHere(session, asked);
  if (!arrangement.isReady) {
    tell(session, arrangement.reason);
    return false;
  }
  const { label, steps, rows } = arrangement;
  const hung = rows.flatMap((row) => (row.table === "terminal" && !row.before ? [refKey("terminal", row.id)] : []));
  const chosen = hung.length > 0 ? { selection: hung } : {};
  const view = { ...chosen, arranging: null, arranged: asked, lastDone: repeatOf(asked) };
  return runCommand(session, "steps.run", { label, steps }, { view });
}

/** Doing the same to what is chosen then. */
export function repeatOf(asked: Arranging): Repeatable {
  return {
    name: arrangeWords.again(asked),
    blocked: (session) => {
      const reason = working(session);
      if (reason !== null) return reason;
      const arrangement = arrangementHere(session, asked);
      return arrangement.isReady ? null : arrangement.reason;
    },
    run: (session) => runArrangement(session, asked),
  };
}
