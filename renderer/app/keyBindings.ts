import { gridKeyOf } from "../tables/gridKeys.ts";
import type { Action } from "./actions/action.ts";
import { machine } from "./machine.ts";

/** Keys every field, list and button keeps for itself. */
const fixedKeys = ["Tab", "Shift+Tab", "Enter", "Escape", " ", "Mod+C", "Mod+V", "Mod+X"] as const;

/** The keys of an action on this machine. */
export function keysOf(action: Action): readonly string[] {
  return machine.getState().keys[action.id] ?? action.keys;
}

/** The key an action of the tables has while a table has the focus; null for other actions. It is not given anew. */
export function tableKeyOf(action: Action): string | null {
  return gridKeyOf(action.id) ?? null;
}

/** Why a key cannot be given to an action, naming what has it; null where it can. */
export function whyTaken(actions: readonly Action[], wanted: Action, key: string): string | null {
  if (fixedKeys.some((one) => one === key)) return "fixed";
  return actions.find((one) => one.id !== wanted.id && keysOf(one).includes(key))?.id ?? null;
}

/** Gives an action one key in place of those it had. */
export function bindKey(action: Action, key: string): void {
  machine.setState(({ keys }) => ({ keys: { ...keys, [action.id]: [key] } }));
}

/** Gives every action its usual keys again. */
export function resetKeys(): void {
  machine.setState({ keys: {} });
}
