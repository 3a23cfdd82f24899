import { type KeyboardEvent, useState } from "react";
import { useStore } from "zustand";
import { type Action, actionOf, actions } from "../app/actions.ts";
import { bindKey, keysOf, resetKeys, tableKeyOf, whyTaken } from "../app/keyBindings.ts";
import { isMac, keyName, shownKey } from "../app/keys.ts";
import { machine } from "../app/machine.ts";
import { Overlay } from "../app/Overlay.tsx";
import type { Session } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { words } from "./words.ts";

/** Every action with its keys, by topic; a key can be changed here, and the sheet printed. */
export function KeySheet() {
  const { view } = useSession();
  const isOpen = useView((state) => state.overlay === "keys");
  if (!isOpen) return null;
  const close = (): void => view.setState({ overlay: null });
  return (
    <Overlay
      label={words.title}
      className="key-sheet"
      onClose={close}
      onHelp={() => view.setState({ overlay: null, helpPage: "keys", helpSought: "" })}
    >
      <header>
        <h2>{words.title}</h2>
        <button type="button" className="fix" onClick={() => window.print()}>
          {words.print}
        </button>
        <button type="button" className="fix" onClick={resetKeys}>
          {words.reset}
        </button>
        <button type="button" className="fix" onClick={close}>
          {words.close}
        </button>
      </header>
      <p className="quiet">{words.about}</p>
      <KeyTables />
    </Overlay>
  );
}

/** The tables of keys, a topic each. */
export function KeyTables() {
  useStore(machine, (state) => state.keys);
  const [changing, setChanging] = useState<string | null>(null);
  const topics = [...new Set(actions.map((one) => one.topic))];
  return (
    <div className="key-tables">
      {topics.map((topic) => (
        <table key={topic}>
          <caption>{topic}</caption>
          <thead className="only-heard">
            <tr>
              <th>{words.action}</th>
              <th>{words.key}</th>
            </tr>
          </thead>
          <tbody>
            {actions
              .filter((one) => one.topic === topic)
              .map((one) => (
                <KeyRow
                  key={one.id}
                  action={one}
                  isChanging={changing === one.id}
                  onChanging={(isChanging) => setChanging(isChanging ? one.id : null)}
                />
              ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}

function KeyRow(props: {
  readonly action: Action;
  readonly isChanging: boolean;
  readonly onChanging: (isChanging: boolean) => void;
}) {
  const { action, isChanging, onChanging } = props;
  const session = useSession();
  const [trouble, setTrouble] = useState("");
  const name = action.name(session);
  const tableKey = tableKeyOf(action);
  const keys = [...keysOf(action), ...(tableKey === null ? [] : [tableKey])].map((key) => shownKey(key, isMac()));

  const listen = (event: KeyboardEvent): void => {
    if (!isChanging || ["Control", "Meta", "Shift", "Alt"].includes(event.key)) return;
    event.preventDefault();
    event.stopPropagation();
    const key = keyName(event, isMac());
    const holder = key === "Escape" ? null : whyTaken(actions, action, key);
    setTrouble(holder === null ? "" : troubleWords(session, key, holder));
    if (holder !== null) return;
    if (key !== "Escape") bindKey(action, key);
    onChanging(false);
  };
  return (
    <tr data-action={action.id}>
      <td>{name}</td>
      <td className="key-cell">
        {isChanging ? (
          <em>{words.press}</em>
        ) : (
          <span>{keys.length === 0 ? <i className="quiet">{words.none}</i> : keys.join(` ${words.or} `)}</span>
        )}
        {tableKey === null && (
          <button
            type="button"
            className="fix"
            aria-label={words.change(name)}
            aria-pressed={isChanging}
            onClick={() => onChanging(!isChanging)}
            onBlur={() => {
              setTrouble("");
              if (isChanging) onChanging(false);
            }}
            onKeyDown={listen}
          >
            {words.changeShort}
          </button>
        )}
        {trouble !== "" && <p role="alert">{trouble}</p>}
      </td>
    </tr>
  );
}

function troubleWords(session: Session, key: string, holder: string): string {
  const shown = shownKey(key, isMac());
  return holder === "fixed" ? words.fixed(shown) : words.taken(shown, actionOf(holder).name(session));
}
