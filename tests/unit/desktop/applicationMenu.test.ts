import { expect, test } from "vitest";
import { applicationMenu } from "../../../electron/desktop/applicationMenu.ts";
import { actions } from "../../../renderer/app/actions.ts";
import { menuOf } from "../../../renderer/app/desktop.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { windowOn } from "../renderer/windowOn.ts";

const undo = { id: "undo", name: "Undo move terminal T-4", key: "Mod+Z", place: "history", isOff: false };
const redo = { id: "redo", name: "Redo", key: null, place: "history", isOff: true };

function entriesOf(menu: ReturnType<typeof applicationMenu>) {
  return menu.flatMap((one) => (Array.isArray(one.submenu) ? one.submenu : []));
}

test("the menu holds the window's actions with their names, keys and whether they can run", () => {
  const asked: string[] = [];
  const deeds = { perform: (id: string) => void asked.push(id), openFile: () => {}, isMac: false };
  const entries = entriesOf(applicationMenu([undo, redo], deeds));
  const first = entries.find((one) => one.id === "undo");
  expect(first).toMatchObject({ label: "Undo move terminal T-4", accelerator: "CommandOrControl+Z", enabled: true });
  expect(entries.find((one) => one.id === "redo")).toMatchObject({ enabled: false });
  Reflect.apply(first?.click ?? (() => {}), null, []);
  expect(asked).toEqual(["undo"]);
});

test("every action of the table stands in the menu once", () => {
  const deeds = { perform: () => {}, openFile: () => {}, isMac: true };
  const ids = entriesOf(applicationMenu(menuOf(windowOn(smallRoute()).session), deeds)).flatMap((one) => one.id ?? []);
  expect(ids.toSorted()).toEqual(actions.map((one) => one.id).toSorted());
});
