import { splitRef } from "../app/ref.ts";
import type { Session } from "../app/session.ts";

/** The one chosen terminal; null where something else or more is chosen. */
export function oneTerminal(session: Session): string | null {
  const [only, ...more] = session.view.getState().selection;
  if (only === undefined || more.length > 0) return null;
  const { table, id } = splitRef(only);
  return table === "terminal" ? id : null;
}
