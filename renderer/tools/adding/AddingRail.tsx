import { Toolbar, Tooltip } from "radix-ui";
import { memo } from "react";
import { type Action, actionOf, perform } from "../../app/actions.ts";
import { keysOf } from "../../app/keyBindings.ts";
import { isMac, shownKey } from "../../app/keys.ts";
import { useSession, useTold, useView } from "../../app/useSession.ts";
import { addingTools } from "./addingTools.ts";
import { words } from "./words.ts";

/** The tools that add by hand, at the edge of the diagram; one tab stop, arrows inside. */
export const AddingRail = memo(function AddingRail() {
  const inHand = useView((state) => state.adding?.tool ?? null);
  return (
    <Toolbar.Root className="adding-rail" orientation="vertical" aria-label={words.rail}>
      {addingTools.map(({ tool, actionId }) => (
        <RailButton key={tool} action={actionOf(actionId)} isInHand={tool === inHand} />
      ))}
    </Toolbar.Root>
  );
});

function RailButton({ action, isInHand }: { readonly action: Action; readonly isInHand: boolean }) {
  const session = useSession();
  const name = useTold(action.name);
  const reason = useTold(action.blocked);
  const [key] = keysOf(action);
  const Icon = action.icon;
  return (
    <Tooltip.Root>
      <Tooltip.Trigger asChild>
        <Toolbar.Button
          className={isInHand ? "act is-in-hand" : "act"}
          aria-label={name}
          aria-pressed={isInHand}
          aria-disabled={reason !== null}
          onClick={() => void perform(session, action)}
        >
          <Icon size={16} strokeWidth={1.75} aria-hidden="true" />
        </Toolbar.Button>
      </Tooltip.Trigger>
      <Tooltip.Portal>
        <Tooltip.Content className="tip" side="right" sideOffset={6} collisionPadding={8}>
          <span>{name}</span>
          {key !== undefined && <kbd>{shownKey(key, isMac())}</kbd>}
          {reason !== null && <em>{reason}</em>}
        </Tooltip.Content>
      </Tooltip.Portal>
    </Tooltip.Root>
  );
}
