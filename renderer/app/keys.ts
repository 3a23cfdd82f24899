import { type Action, actions, perform } from "./actions.ts";
import { keysOf } from "./keyBindings.ts";
import type { Session } from "./session.ts";

/** What of a keyboard event decides which key it was. */
export type KeyPress = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">;

/** True on machines whose command key is Cmd. */
export function isMac(): boolean {
  return /mac/i.test(navigator.userAgent);
}

/** A key press as the command table writes it, such as `Mod+Shift+Z`. */
export function keyName(press: KeyPress, hasCmd: boolean): string {
  const isMod = hasCmd ? press.metaKey : press.ctrlKey;
  const isLetter = /^[a-z]$/i.test(press.key);
  const key = isLetter ? press.key.toUpperCase() : press.key;
  // Shift is part of a sign already: "+" and not "Shift+=".
  const isShift = press.shiftKey && (isLetter || press.key.length > 1);
  return [isMod ? "Mod" : "", press.altKey ? "Alt" : "", isShift ? "Shift" : "", key].filter(Boolean).join("+");
}

/** A key as a person reads it on this machine. */
export function shownKey(key: string, hasCmd: boolean): string {
  const named = key.replace("Escape", "Esc");
  return hasCmd ? named.replace("Mod+", "⌘").replace("Shift+", "⇧") : named.replace("Mod", "Ctrl");
}

/** The action a key press asks for, or null. Keys without Mod belong to the diagram, Escape to the whole window. */
export function actionFor(press: KeyPress, hasCmd: boolean, isOnDiagram: boolean): Action | null {
  // Escape gives up whatever else is held, such as Mod that suspends snapping
  const name = press.key === "Escape" ? "Escape" : keyName(press, hasCmd);
  const isEverywhere = name.startsWith("Mod+") || name === "Escape" || name === "?" || /^F\d+$/.test(name);
  if (!isEverywhere && !isOnDiagram) return null;
  return actions.find((one) => keysOf(one).includes(name)) ?? null;
}

/** Listens for the keys of the command table; fields keep the keys they edit with. */
export function listenForKeys(session: Session): () => void {
  const listen = (event: KeyboardEvent): void => {
    const target = event.target instanceof Element ? event.target : null;
    // a box that is only ticked keeps no keys to edit with
    const isField = target?.closest("input:not([type=checkbox]), select, textarea") != null;
    const asked = actionFor(event, isMac(), target?.closest("[data-diagram]") != null);
    if (!asked || (isField && asked.id !== "back" && asked.isEverywhere !== true)) return;
    event.preventDefault();
    void perform(session, asked);
  };
  window.addEventListener("keydown", listen);
  return () => window.removeEventListener("keydown", listen);
}
