import { Tooltip } from "radix-ui";
import type { ReactElement } from "react";

type Props = {
  readonly name: string;
  /** Key that does the same; empty for none. */
  readonly shortcut?: string;
  /** Why it cannot be done now, or null. */
  readonly reason?: string | null;
  /** The control it belongs to. */
  readonly children: ReactElement;
};

/** What a control does and the key that does the same, on resting the pointer and on focus. */
export function Tip({ name, shortcut = "", reason = null, children }: Props) {
  return (
    <Tooltip.Root>
      <Tooltip.Trigger asChild>{children}</Tooltip.Trigger>
      <Tooltip.Portal>
        <Tooltip.Content className="tip" sideOffset={6} collisionPadding={8}>
          <span>{name}</span>
          {shortcut !== "" && <kbd>{shortcut}</kbd>}
          {reason !== null && <em>{reason}</em>}
        </Tooltip.Content>
      </Tooltip.Portal>
    </Tooltip.Root>
  );
}
