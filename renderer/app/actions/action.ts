import type { LucideIcon } from "lucide-react";
import { lookOnlyReason } from "../files.ts";
import type { Session } from "../session.ts";
import { actionWords, topicWords } from "./words.ts";

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
  readonly place: "file" | "history" | "work" | "closeout" | "view" | "help" | null;
  /** Heading it stands under on the key sheet. */
  readonly topic: string;
  /** True where its key works in fields too. */
  readonly isEverywhere?: boolean;
  /** True where it does not wait for an edit to be answered: what is typed right behind its key belongs to it, not to the diagram. */
  readonly isAtOnce?: boolean;
  /** Whether the bar shows the name beside the icon. */
  readonly isWritten: boolean;
  /** True where it can be done again to what is chosen then. */
  readonly isRepeatable?: boolean;
};

/** Something that was done to what was chosen, ready to be done again to what is chosen now. */
export type Repeatable = Pick<Action, "blocked" | "run"> & { readonly name: string };

/** Why nothing can be done without a route. */
const closed = (session: Session): string | null => (session.store.get() ? null : actionWords.noRoute);

/** Why an edit has to wait, or cannot be made at all. */
export const working = (session: Session): string | null => {
  const { job } = session.view.getState();
  return lookOnlyReason(session) ?? closed(session) ?? (job?.holdsEdits ? actionWords.waitFor(job.name) : null);
};

/** Why long work has to wait. */
export const waiting = (session: Session): string | null => {
  const { job } = session.view.getState();
  return closed(session) ?? (job ? actionWords.waitFor(job.name) : null);
};

/** Why long work that ends in an edit has to wait, or cannot be done at all. */
export const layingOut = (session: Session): string | null => working(session) ?? waiting(session);

/** Why the diagram cannot be changed now. */
export const beyondDiagram = (session: Session): string | null =>
  closed(session) ?? (session.view.getState().sheets ? actionWords.sheetsFirst : null);

/** An action with the usual ways where it does not say otherwise. */
export function action(id: string, rest: Partial<Action> & Pick<Action, "name" | "icon" | "run">): Action {
  const topic = topicWords[rest.place ?? "none"];
  return { id, keys: [], blocked: closed, place: null, isWritten: false, topic, ...rest };
}
