import type { LucideIcon } from "lucide-react";
import type { Session } from "../session.ts";

/** One thing a person can ask for: buttons, keys and tooltips are all made from these. */
export type Action = {
  readonly id: string;
  /** Verb first, sentence case; names the step where there is one. */
  readonly name: (session: Session) => string;
  /** Keys that run it, as `Mod+Shift+Z`; a key without Mod works while the diagram has the focus. */
  readonly keys: readonly string[];
  readonly icon: LucideIcon;
  /** Why it cannot run now, or null where it can. */
  readonly blocked: (session: Session) => string | null;
  readonly run: (session: Session) => unknown;
  /** Place in the bar, or null where keys alone reach it. */
  readonly place: "history" | "work" | "view" | null;
  /** Whether the bar shows the name beside the icon. */
  readonly isWritten: boolean;
};

/** Why nothing can be done without a route. */
const closed = (session: Session): string | null => (session.store.get() ? null : "No route is open.");

/** Why an edit has to wait. */
export const working = (session: Session): string | null => {
  const { job } = session.view.getState();
  return closed(session) ?? (job ? `Wait for "${job.name}" to end, or stop it.` : null);
};

/** Why the diagram cannot be changed now. */
export const beyondDiagram = (session: Session): string | null =>
  closed(session) ?? (session.view.getState().sheets ? "The sheets are shown; close them first." : null);

/** An action with the usual ways where it does not say otherwise. */
export function action(id: string, rest: Partial<Action> & Pick<Action, "name" | "icon" | "run">): Action {
  return { id, keys: [], blocked: closed, place: null, isWritten: false, ...rest };
}
