import type { Action } from "./actions/action.ts";
import { addingActions } from "./actions/addingActions.ts";
import { arrangeActions } from "./actions/arrangeActions.ts";
import { balanceActions } from "./actions/balanceActions.ts";
import { closeoutActions } from "./actions/closeoutActions.ts";
import { editActions } from "./actions/editActions.ts";
import { exportActions } from "./actions/exportActions.ts";
import { fileActions } from "./actions/fileActions.ts";
import { handActions } from "./actions/handActions.ts";
import { helpActions } from "./actions/helpActions.ts";
import { historyActions } from "./actions/historyActions.ts";
import { layoutActions } from "./actions/layoutActions.ts";
import { packetActions } from "./actions/packetActions.ts";
import { pinActions } from "./actions/pinActions.ts";
import { profileActions } from "./actions/profileActions.ts";
import { revisionActions } from "./actions/revisionActions.ts";
import { settingsActions } from "./actions/settingsActions.ts";
import { signOffActions } from "./actions/signOffActions.ts";
import { straightActions } from "./actions/straightActions.ts";
import { tableActions } from "./actions/tableActions.ts";
import { traceActions } from "./actions/traceActions.ts";
import { viewActions } from "./actions/viewActions.ts";
import { workActions } from "./actions/workActions.ts";
import { untilAnswered } from "./edits.ts";
import { type Session, tell } from "./session.ts";

export type { Action } from "./actions/action.ts";

/** Every action of the window, in the order of the bar. */
export const actions: readonly Action[] = [
  ...fileActions,
  ...exportActions,
  ...editActions,
  ...historyActions,
  ...revisionActions,
  ...workActions,
  ...layoutActions,
  ...packetActions,
  ...closeoutActions,
  ...traceActions,
  ...signOffActions,
  ...viewActions,
  ...tableActions,
  ...profileActions,
  ...balanceActions,
  ...handActions,
  ...pinActions,
  ...arrangeActions,
  ...straightActions,
  ...addingActions,
  ...settingsActions,
  ...helpActions,
];

/** The action of an id. */
export function actionOf(id: string): Action {
  const found = actions.find((one) => one.id === id);
  if (!found) throw new Error(`no such action: ${id}`);
  return found;
}

/** Runs an action, or says why it cannot; one asked for while an edit is being answered sees what that edit made. */
export async function perform(session: Session, wanted: Action): Promise<void> {
  while (!wanted.isAtOnce && session.view.getState().isBusy) await untilAnswered(session);
  const reason = wanted.blocked(session);
  if (reason !== null) return tell(session, reason);
  const { blocked, run, isRepeatable } = wanted;
  if (isRepeatable) session.view.setState({ lastDone: { name: wanted.name(session), blocked, run } });
  void run(session);
}
