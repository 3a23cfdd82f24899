import { runCommand } from "../app/edits.ts";
import type { Session } from "../app/session.ts";

/** Runs an edit of a form as soon as the one before it is answered, so that fast typing loses nothing. */
export async function keepEdit(session: Session, commandId: string, input: unknown): Promise<boolean> {
  await idle(session);
  return runCommand(session, commandId, input);
}

function idle({ view }: Session): Promise<void> {
  if (!view.getState().isBusy) return Promise.resolve();
  return new Promise((resolve) => {
    const end = view.subscribe((state) => {
      if (state.isBusy) return;
      end();
      resolve();
    });
  });
}
