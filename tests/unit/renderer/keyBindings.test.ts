import { afterEach, expect, test } from "vitest";
import { actionOf, actions } from "../../../renderer/app/actions.ts";
import { bindKey, keysOf, resetKeys, whyTaken } from "../../../renderer/app/keyBindings.ts";
import { actionFor } from "../../../renderer/app/keys.ts";

afterEach(resetKeys);

const press = (key: string) => ({ key, ctrlKey: true, metaKey: false, shiftKey: false, altKey: false });

test("a key given to an action runs it in place of its usual one, until keys are reset", () => {
  bindKey(actionOf("findings"), "Mod+U");
  expect(actionFor(press("u"), false, false)?.id).toBe("findings");
  expect(actionFor(press("j"), false, false)).toBeNull();
  resetKeys();
  expect(keysOf(actionOf("findings"))).toEqual(["Mod+J"]);
});

test("a key another action has is refused by the action's id, keys of fields always", () => {
  expect(whyTaken(actions, actionOf("findings"), "Mod+Z")).toBe("undo");
  expect(whyTaken(actions, actionOf("findings"), "Tab")).toBe("fixed");
  expect(whyTaken(actions, actionOf("findings"), "Mod+J")).toBeNull();
});

test("no two actions share an id", () => {
  const ids = actions.map((one) => one.id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

test("no two actions share a usual key", () => {
  const keys = actions.flatMap((one) => one.keys);
  expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
});
