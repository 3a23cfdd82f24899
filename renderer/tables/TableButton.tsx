import { actionOf, perform } from "../app/actions.ts";
import { isMac, shownKey } from "../app/keys.ts";
import { useSession, useView } from "../app/useSession.ts";
import { Tip } from "../panels/Tip.tsx";
import { gridKeyOf } from "./gridKeys.ts";

/** A button of the tables for an action; says the key that does the same while the table has the focus. */
export function TableButton({ actionId }: { readonly actionId: string }) {
  const session = useSession();
  const action = actionOf(actionId);
  const name = useView(() => action.name(session));
  const reason = useView(() => action.blocked(session));
  const key = gridKeyOf(actionId) ?? action.keys[0];
  const Icon = action.icon;
  return (
    <Tip name={name} shortcut={key === undefined ? "" : shownKey(key, isMac())} reason={reason}>
      <button
        type="button"
        className="act"
        aria-label={name}
        aria-disabled={reason !== null}
        onClick={() => void perform(session, action)}
      >
        <Icon size={16} strokeWidth={1.75} aria-hidden="true" />
      </button>
    </Tip>
  );
}
