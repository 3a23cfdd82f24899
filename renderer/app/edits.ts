import type { EditReply } from "../../core/contract/contract.ts";
import type { Result } from "../../core/model/result.ts";
import type { Fix } from "../../core/rules/rule.ts";
import { bringIntoView } from "./look.ts";
import { refKey } from "./ref.ts";
import { openRouteOf, type Session, showFault, takeEdit, tell } from "./session.ts";

/** Runs a command of the register by its id; true where it was carried out. Edits of one gesture are one step of undo. */
export async function runCommand(
  session: Session,
  commandId: string,
  input: unknown,
  gestureId?: string,
): Promise<boolean> {
  const { routeId } = openRouteOf(session);
  const gesture = gestureId === undefined ? {} : { gestureId };
  return carryOut(session, "", () => session.host.call("edit.run", { routeId, commandId, input, ...gesture }));
}

/** Applies what a finding offers as its mend. */
export async function applyFix(session: Session, fix: Fix): Promise<boolean> {
  return runCommand(session, fix.command, fix.input);
}

/** Takes the last edit back and shows where. */
export async function undo(session: Session): Promise<boolean> {
  await untilIdle(session);
  const { routeId } = openRouteOf(session);
  return carryOut(session, "Undone: ", () => session.host.call("edit.undo", { routeId }));
}

/** Makes the last edit taken back again and shows where. */
export async function redo(session: Session): Promise<boolean> {
  await untilIdle(session);
  const { routeId } = openRouteOf(session);
  return carryOut(session, "Redone: ", () => session.host.call("edit.redo", { routeId }));
}

/** Shows an edit that came back: what it was called, and the places it touched. */
export async function showEdit(session: Session, prefix: string, edit: EditReply): Promise<void> {
  await takeEdit(session, edit);
  bringIntoView(
    session,
    edit.rows.map((row) => refKey(row.table, row.id)),
  );
  tell(session, `${prefix}${edit.label}`);
}

/** A step back asked for while an edit is being answered waits for it, rather than being lost. */
async function untilIdle({ view }: Session): Promise<void> {
  while (view.getState().isBusy) {
    await new Promise<void>((resolve) => {
      const stop = view.subscribe((now) => {
        if (now.isBusy) return;
        stop();
        resolve();
      });
    });
  }
}

async function carryOut(session: Session, prefix: string, ask: () => Promise<Result<EditReply>>): Promise<boolean> {
  if (session.view.getState().isBusy) return false;
  session.view.setState({ isBusy: true });
  try {
    const reply = await ask();
    if (!reply.ok) {
      showFault(session, reply.fault);
      return false;
    }
    session.view.setState({ fault: null });
    await showEdit(session, prefix, reply.value);
    return true;
  } finally {
    session.view.setState({ isBusy: false });
  }
}
