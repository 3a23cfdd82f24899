import { expect, test } from "vitest";
import { actions } from "../../../renderer/app/actions.ts";
import { actionFor, type KeyPress, keyName, shownKey } from "../../../renderer/app/keys.ts";

function press(key: string, held: Partial<KeyPress> = {}): KeyPress {
  return { key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...held };
}

test("undo and redo are on the keys everybody knows", () => {
  expect(actionFor(press("z", { ctrlKey: true }), false, false)?.id).toBe("undo");
  expect(actionFor(press("Z", { ctrlKey: true, shiftKey: true }), false, false)?.id).toBe("redo");
  expect(actionFor(press("y", { ctrlKey: true }), false, false)?.id).toBe("redo");
  expect(actionFor(press("z", { metaKey: true }), true, false)?.id).toBe("undo");
});

test("a key without Mod works on the diagram only", () => {
  expect(actionFor(press("0"), false, true)?.id).toBe("fit");
  expect(actionFor(press("0"), false, false)).toBeNull();
  expect(actionFor(press("+", { shiftKey: true }), false, true)?.id).toBe("zoomIn");
});

test("Escape backs out wherever one is, whatever else is held", () => {
  expect(actionFor(press("Escape", { ctrlKey: true, shiftKey: true }), false, false)?.id).toBe("back");
  expect(actionFor(press("Escape"), false, false)?.id).toBe("back");
});

test("no two actions are on one key, and every key is written as it is read", () => {
  const keys = actions.flatMap((one) => one.keys);
  expect(keys.length).toBeGreaterThan(8);
  expect(new Set(keys).size).toBe(keys.length);
  expect(keyName(press("z", { ctrlKey: true, shiftKey: true }), false)).toBe("Mod+Shift+Z");
  expect([shownKey("Mod+Shift+Z", false), shownKey("Mod+Shift+Z", true)]).toEqual(["Ctrl+Shift+Z", "⌘⇧Z"]);
});
