import { actionOf } from "../app/actions.ts";
import { ActionButton } from "./Bar.tsx";

/** A view with nothing in it: one sentence that says why, and what to do about it as a button. */
export function EmptyState({ says, actionIds }: { readonly says: string; readonly actionIds: readonly string[] }) {
  return (
    <div className="empty">
      <p>{says}</p>
      {actionIds.map((id) => (
        <ActionButton key={id} action={{ ...actionOf(id), isWritten: true }} />
      ))}
    </div>
  );
}
