import { DropdownMenu } from "radix-ui";
import { actionOf, perform } from "../app/actions.ts";
import { isMac, shownKey } from "../app/keys.ts";
import { useSession } from "../app/useSession.ts";
import { gridKeyOf } from "./gridKeys.ts";

const items = [
  "tableEdit",
  "tableExplain",
  "tableCopy",
  "tableCopyHeadings",
  "tableFill",
  "tableClear",
  "tableAdd",
  "tableRemove",
  "undo",
] as const;

type Props = { readonly at: { readonly x: number; readonly y: number } | null; readonly close: () => void };

/** The short menu of a cell: the same actions and names as elsewhere. */
export function CellMenu({ at, close }: Props) {
  const session = useSession();
  return (
    <DropdownMenu.Root open={at !== null} onOpenChange={(isOpen) => !isOpen && close()} modal={false}>
      <DropdownMenu.Trigger asChild>
        <i className="menu-place" aria-hidden="true" style={at ? { left: at.x, top: at.y } : undefined} />
      </DropdownMenu.Trigger>
      <DropdownMenu.Portal>
        <DropdownMenu.Content className="table-menu" align="start" collisionPadding={8}>
          {items.map(actionOf).map((action) => {
            const reason = action.blocked(session);
            const key = gridKeyOf(action.id) ?? action.keys[0];
            return (
              <DropdownMenu.Item
                key={action.id}
                disabled={reason !== null}
                title={reason ?? undefined}
                onSelect={() => void perform(session, action)}
              >
                <span>{action.name(session)}</span>
                {key !== undefined && <kbd>{shownKey(key, isMac())}</kbd>}
              </DropdownMenu.Item>
            );
          })}
        </DropdownMenu.Content>
      </DropdownMenu.Portal>
    </DropdownMenu.Root>
  );
}
