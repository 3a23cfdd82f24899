import { Tooltip } from "radix-ui";
import { actionOf, perform } from "../app/actions.ts";
import { isMac, shownKey } from "../app/keys.ts";
import { useSession, useView } from "../app/useSession.ts";
import { gridKeyOf } from "./gridKeys.ts";

/** A button of the tables for an action; says the key that does the same while the table has the focus. */
export function TableButton({ actionId }: { readonly actionId: string }) {
  const session = useSession();
  useView((state) => state.tables);
  useView((state) => state.job);
  const action = actionOf(actionId);
  const name = action.name(session);
  const reason = action.blocked(session);
  const key = gridKeyOf(actionId) ?? action.keys[0];
  const Icon = action.icon;
  return (
    <Tooltip.Root>
      <Tooltip.Trigger asChild>
        <button
          type="button"
          className="act"
          aria-label={name}
          aria-disabled={reason !== null}
          onClick={() => void perform(session, action)}
        >
          <Icon size={16} strokeWidth={1.75} aria-hidden="true" />
        </button>
      </Tooltip.Trigger>
      <Tooltip.Portal>
        <Tooltip.Content className="tip" sideOffset={6} collisionPadding={8}>
          <span>{name}</span>
          {key !== undefined && <kbd>{shownKey(key, isMac())}</kbd>}
          {reason !== null && <em>{reason}</em>}
        </Tooltip.Content>
      </Tooltip.Portal>
    </Tooltip.Root>
  );
}
