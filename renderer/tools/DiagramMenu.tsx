import { ContextMenu } from "radix-ui";
import { type MouseEvent, type ReactElement, type RefObject, useState } from "react";
import type { TableName } from "../../core/model/tables.ts";
import { actionOf, perform } from "../app/actions.ts";
import { keysOf } from "../app/keyBindings.ts";
import { isMac, shownKey } from "../app/keys.ts";
import { splitRef } from "../app/ref.ts";
import { useSession } from "../app/useSession.ts";
import { hitAll } from "../canvas/hitTest.ts";
import type { Picture } from "../canvas/paint.ts";
import { focusDiagram } from "./DiagramField.tsx";
import { toolWords } from "./words.ts";

/** Actions offered for each kind of thing, by their ids in the command table. */
const menuOf: Partial<Record<TableName | "ground", readonly string[]>> = {
  pole: ["rename", "bar", "arrange", "hangAlong", "fitChosen", "removeChosen"],
  span: ["hangAlong", "fitChosen", "removeChosen"],
  crossing: ["rename", "duplicate", "fitChosen", "removeChosen"],
  terminal: [
    "exact",
    "rename",
    "pin",
    "turn",
    "duplicate",
    "arrange",
    "repeat",
    "terminalSheet",
    "fitChosen",
    "removeChosen",
  ],
  guy: ["fitChosen", "removeChosen"],
  structure: ["rename", "duplicate", "fitChosen", "removeChosen"],
  groundPoint: ["duplicate", "fitChosen", "removeChosen"],
  slack: ["duplicate", "fitChosen", "removeChosen"],
  closure: ["fitChosen", "removeChosen"],
  livingUnit: ["rename", "pin", "fitChosen", "removeChosen"],
  ground: ["all", "fit", "scale", "measure", "kinds", "undo", "redo"],
};

type Props = {
  readonly picture: RefObject<Picture>;
  readonly ground: RefObject<HTMLElement | null>;
  readonly children: ReactElement;
};

/** The short menu of what is under the pointer; what it offers is chosen first, so that one sees what is meant. */
export function DiagramMenu({ picture, ground, children }: Props) {
  const session = useSession();
  const [kind, setKind] = useState<TableName | "ground">("ground");
  const look = (event: MouseEvent): void => {
    const frame = ground.current?.getBoundingClientRect();
    if (!frame) return;
    const hit = hitAll(picture.current, event.clientX - frame.x, event.clientY - frame.y)[0];
    const { selection } = session.view.getState();
    if (!hit) session.view.setState({ selection: [] });
    else if (!selection.includes(hit)) session.view.setState({ selection: [hit] });
    setKind(hit ? splitRef(hit).table : "ground");
  };
  // at once, not when the menu has gone: the next key may come sooner
  const giveKeysBack = (): void => {
    const { inPlace, exact } = session.view.getState();
    if (inPlace === null && exact === null) focusDiagram();
  };
  return (
    <ContextMenu.Root modal={false} onOpenChange={(isOpen) => !isOpen && giveKeysBack()}>
      <ContextMenu.Trigger asChild onContextMenu={look}>
        {children}
      </ContextMenu.Trigger>
      <ContextMenu.Portal>
        <ContextMenu.Content
          className="menu"
          aria-label={toolWords.menu}
          collisionPadding={8}
          // Escape backs out one level: the menu goes, what is chosen stays
          onEscapeKeyDown={(event) => event.stopPropagation()}
          onCloseAutoFocus={(event) => event.preventDefault()}
        >
          {(menuOf[kind] ?? []).map((id) => (
            <MenuLine key={id} id={id} />
          ))}
        </ContextMenu.Content>
      </ContextMenu.Portal>
    </ContextMenu.Root>
  );
}

function MenuLine({ id }: { readonly id: string }) {
  const session = useSession();
  const action = actionOf(id);
  const reason = action.blocked(session);
  const [key] = keysOf(action);
  const Icon = action.icon;
  return (
    <ContextMenu.Item className="menu-item" disabled={reason !== null} onSelect={() => void perform(session, action)}>
      <Icon size={16} strokeWidth={1.75} aria-hidden="true" />
      <span>{action.name(session)}</span>
      {reason !== null && <em>{reason}</em>}
      {key !== undefined && <kbd>{shownKey(key, isMac())}</kbd>}
    </ContextMenu.Item>
  );
}
