import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { listBackups } from "../../db/backup.ts";
import { openRoute } from "../../electron/host/openRoute.ts";
import { eachOnMachine } from "./eachOnMachine.ts";
import { openDemoRoute, type Program, stampOf } from "./programs.ts";

const slow = { timeout: 30_000 };
const unitsButton = /^Switch to (metric units|feet and inches)$/;

const { machine } = eachOnMachine();

async function settingsNow({ host }: Program, routeId: string) {
  const read = await host.call("route.read", { routeId });
  if (!read.ok) throw new Error(read.fault.what);
  return (read.value as { tables: { settings: readonly { unitSystem: string }[] } }).tables.settings[0]; // the reply of that method
}

test("no save is needed: the state tells the last edit, Ctrl+S says so, a backup can be made and put back, and what was before is in the list", async () => {
  const program = await machine().start();
  const page = await machine().openPage(program);
  await openDemoRoute(page);
  await page.keyboard.press("Control+s");
  await page
    .getByRole("status")
    .getByText(/^All changes saved, last edit /)
    .waitFor();
  await page.getByRole("button", { name: "Show copies and backups" }).click();
  const panel = page.getByRole("complementary", { name: "Copies and backups" });
  await panel.getByRole("button", { name: "Make a backup now" }).click();
  await page.getByText(/^Backup made, /).waitFor();
  const path = machine().demoPath;
  const before = listBackups(path).length;
  await page.getByRole("button", { name: unitsButton }).click();
  await expect.poll(async () => (await settingsNow(program, "route-1"))?.unitSystem, slow).toBe("metric");
  await panel
    .getByRole("button", { name: /^Restore / })
    .first()
    .click();
  await page.getByText(/^Restored the route of /).waitFor();
  expect((await settingsNow(program, "route-1"))?.unitSystem).toBe("us");
  await page.getByRole("button", { name: "Switch to metric units" }).waitFor();
  expect(listBackups(path)).toHaveLength(before + 1);
  expect(await panel.getByRole("list", { name: "Backups" }).getByRole("listitem").count()).toBe(before + 1);
  await panel.getByLabel("File name").fill("Copy for Jo");
  await panel.getByRole("button", { name: "Save the copy" }).click();
  await page.getByText(/^Copy saved as Copy for Jo\.strand/).waitFor();
  expect(existsSync(join(machine().home, "Copy for Jo.strand"))).toBe(true);
  // a copy replaces nothing, so nobody has to be asked
  const bytes = readFileSync(join(machine().home, "Copy for Jo.strand"));
  await panel.getByRole("button", { name: "Save the copy" }).click();
  await page.getByRole("alert").getByText("There is already a file of this name.").waitFor();
  expect(readFileSync(join(machine().home, "Copy for Jo.strand")).equals(bytes)).toBe(true);
});

test("a lost program is told, and the page takes up again when it is back; a reload shows the saved state", async () => {
  const program = await machine().start();
  const page = await machine().openPage(program);
  await openDemoRoute(page);
  await page.getByRole("button", { name: "Switch to metric units" }).click();
  await page.getByRole("button", { name: "Switch to feet and inches" }).waitFor();
  await program.close();
  const banner = page.getByRole("region", { name: "State of the route" });
  await banner.getByText("The program behind this window does not answer.").waitFor();
  const again = await machine().start("Field", program.loopback.port);
  const reopened = openRoute(machine().demoPath, stampOf("Field"));
  if (!reopened.ok) throw new Error(reopened.fault.what);
  again.host.add(reopened.value);
  const second = await machine().besides(page, again);
  await second.close();
  await expect.poll(() => banner.textContent(), slow).toBe("");
  await page.getByText("The program answers again").waitFor();
  await page.reload();
  await page.getByRole("button", { name: "Switch to feet and inches" }).waitFor();
});
