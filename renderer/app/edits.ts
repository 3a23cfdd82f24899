import type { EditReply } from "../../core/contract/contract.ts";
import type { Result } from "../../core/model/result.ts";
import { settingsOf } from "../../core/model/route.ts";
import type { Settings } from "../../core/model/tables.ts";
import type { Fix } from "../../core/rules/rule.ts";
import { bringIntoView } from "./look.ts";
import { refKey } from "./ref.ts";
import { openRouteOf, type Session, showFault, takeEdit, tell } from "./session.ts";
import type { ViewState } from "./viewStore.ts";
import { words } from "./words.ts";

type AskedWith = {
  /** Edits of one gesture are one step of undo. */
  readonly gestureId?: string;
  /** How the view is once the edit is in: set before the next thing asked for begins, so that it meets what this one chose. */
  readonly view?: Partial<ViewState> | ((now: ViewState) => Partial<ViewState>);
};

/** Runs a command of the register by its id; true where it was carried out. */
export async function runCommand(
  session: Session,
  commandId: string,
  input: unknown,
  { gestureId, view }: AskedWith = {},
): Promise<boolean> {
  const { routeId } = openRouteOf(session);
  const gesture = gestureId === undefined ? {} : { gestureId };
  const ask = () => session.host.call("edit.run", { routeId, commandId, input, ...gesture });
  return carryOut(session, "", ask, view);
}

/** Changes standards by what they are when their turn comes: of choices made faster than the host answers none undoes another. */
export async function changeSettings(
  session: Session,
  valuesOf: (now: Settings) => Partial<Settings>,
): Promise<boolean> {
  return carryOut(session, "", () => {
    const { routeId, route } = openRouteOf(session);
    const input = { values: valuesOf(settingsOf(route)) };
    return session.host.call("edit.run", { routeId, commandId: "settings.set", input });
  });
}

/** Applies what a finding offers as its mend. */
export async function applyFix(session: Session, fix: Fix): Promise<boolean> {
  return runCommand(session, fix.command, fix.input);
}

/** Takes the last edit back and shows where. */
export async function undo(session: Session): Promise<boolean> {
  const { routeId } = openRouteOf(session);
  return carryOut(session, words.undone, () => session.host.call("edit.undo", { routeId }));
}

/** Makes the last edit taken back again and shows where. */
export async function redo(session: Session): Promise<boolean> {
  const { routeId } = openRouteOf(session);
  return carryOut(session, words.redone, () => session.host.call("edit.redo", { routeId }));
}

/** Takes in an edit that came back and shows what it was called and the places it touched. */
export async function showEdit(session: Session, edit: EditReply): Promise<void> {
  await takeEdit(session, edit);
  reveal(session, edit, "");
}

function reveal(session: Session, edit: EditReply, prefix: string): void {
  bringIntoView(
    session,
    edit.rows.map((row) => refKey(row.table, row.id)),
  );
  tell(session, `${prefix}${edit.label}`);
}

/** Ends when the edit under way is answered; at once where none is. */
export function untilAnswered({ view }: Session): Promise<void> {
  if (!view.getState().isBusy) return Promise.resolve();
  return new Promise((resolve) => {
    const stop = view.subscribe((now) => {
      if (now.isBusy) return;
      stop();
      resolve();
    });
  });
}

/** Edits are made one after another in the order they were asked for: fast hands lose nothing. */
export async function carryOut(
  session: Session,
  prefix: string,
  ask: () => Promise<Result<EditReply>>,
  view: AskedWith["view"] = {},
): Promise<boolean> {
  while (session.view.getState().isBusy) await untilAnswered(session);
  session.view.setState({ isBusy: true });
  try {
    const reply = await ask();
    if (!reply.ok) {
      showFault(session, reply.fault);
      return false;
    }
    session.view.setState({ fault: null });
    const reading = takeEdit(session, reply.value);
    // without a pause the edit, its message and the view are one drawing of the window
    if (reading) await reading;
    reveal(session, reply.value, prefix);
    session.view.setState(view);
    return true;
  } finally {
    session.view.setState({ isBusy: false });
  }
}
