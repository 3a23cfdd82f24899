import { actionOf } from "../app/actions.ts";
import { ActionButton } from "./Bar.tsx";

type Props = {
  readonly says: string;
  readonly actionIds?: readonly string[];
  /** A way on of the view's own, where no action of the window is one. */
  readonly way?: { readonly name: string; readonly run: () => void };
};

/** A view with nothing in it: one sentence that says why, and what to do about it as a button. */
export function EmptyState({ says, actionIds = [], way }: Props) {
  return (
    <div className="empty">
      <p>{says}</p>
      {actionIds.map((id) => (
        <ActionButton key={id} action={{ ...actionOf(id), isWritten: true }} />
      ))}
      {way && (
        <button type="button" className="fix" onClick={way.run}>
          {way.name}
        </button>
      )}
    </div>
  );
}
