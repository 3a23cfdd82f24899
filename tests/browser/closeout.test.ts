import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { closeoutBoard } from "../../core/closeout/board.ts";
import { standingOf } from "../../core/closeout/standing.ts";
import { subjectOf } from "../../core/closeout/subject.ts";
import type { Row } from "../../core/model/tables.ts";
import { cablePath, sheathToM } from "../../core/plant/cablePath.ts";
import { terminalHang } from "../../core/plant/terminalView.ts";
import { metresPerFoot } from "../../core/units/constants.ts";
import { selection } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo(async ({ page }) => {
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("d");
  await page.getByLabel("Read and signed by").fill("R. Vance");
});

const grid = (page: Page): Locator => page.getByRole("grid", { name: "Closeout by terminal" });
const rowOf = (page: Page, id: string): Locator => grid(page).locator(`[data-row="${id}"]`);
const field = (page: Page, readingId: string): Locator => page.locator(`[data-reading="${readingId}"]`);

function firstTerminal(): Row<"terminal"> {
  const [terminal] = [...opened().session.route().terminal.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  if (!terminal) throw new Error("the demo route has no terminal");
  return terminal;
}

const readingOf = (id: string) => opened().session.route().reading.get(id);

/** Opens the readings of a terminal by keys: down the board to its row, Enter. */
async function enterBy(page: Page, terminal: Row<"terminal">): Promise<void> {
  await grid(page).focus();
  for (let turn = 0; turn < 200; turn += 1) {
    await page.keyboard.press("ArrowDown");
    if (
      (await rowOf(page, terminal.id)
        .getAttribute("aria-selected")
        .catch(() => null)) === "true"
    )
      break;
  }
  await page.keyboard.press("Enter");
  await page.getByRole("region", { name: `Readings: ${terminal.name}` }).waitFor();
}

/** Opens them by a press on its row. */
async function pressRow(page: Page, terminal: Row<"terminal">): Promise<Locator> {
  await rowOf(page, terminal.id).getByRole("rowheader").click();
  const form = page.getByRole("region", { name: `Readings: ${terminal.name}` });
  await form.waitFor();
  return form;
}

/** Reads a terminal 12 in farther out than drawn, so that it deviates. */
async function readFarOut(page: Page, terminal: Row<"terminal">): Promise<Locator> {
  const form = await pressRow(page, terminal);
  await field(page, `terminal ${terminal.id} offset`).fill("48 in");
  await page.keyboard.press("Enter");
  await form.locator(".finding").waitFor();
  return form;
}

const deviates = (): readonly string[] =>
  opened()
    .session.findings()
    .filter((one) => one.ruleId === "built-offset" && one.waiverId === null)
    .map((one) => one.message);

test("a row marked issued says so on the board, kind by kind, and who said it", async () => {
  const { page, session } = opened();
  const terminal = firstTerminal();
  const form = await pressRow(page, terminal);
  expect(await selection(page)).toEqual([terminal.id]);
  await form
    .getByRole("group", { name: `Everything in ${terminal.name} is` })
    .getByRole("button", { name: "issued" })
    .click();
  await expect.poll(() => rowOf(page, terminal.id).textContent()).toContain("16 issued");
  expect(session.route().milestone.get(`terminal ${terminal.id} issued`)).toMatchObject({ by: "R. Vance" });
});

test("readings are written from field to field by Enter, in any unit, and taken back by emptying the field", async () => {
  const { page } = opened();
  const terminal = firstTerminal();
  await enterBy(page, terminal);
  await field(page, `terminal ${terminal.id} offset`).focus();
  for (const typed of ["3 ft", "20 ft", "1204", "1214"]) {
    await page.keyboard.type(typed);
    await page.keyboard.press("Enter");
  }
  await expect.poll(() => readingOf(`terminal ${terminal.id} markAfter`)?.value).toBe(1214);
  expect(readingOf(`terminal ${terminal.id} offset`)).toMatchObject({ value: 0.9144, by: "R. Vance" });
  expect(readingOf(`terminal ${terminal.id} slack`)?.value).toBeCloseTo(6.096, 9);
  await field(page, `terminal ${terminal.id} offset`).fill("");
  await page.keyboard.press("Enter");
  await expect.poll(() => readingOf(`terminal ${terminal.id} offset`)).toBeUndefined();
});

test("a reading nobody signs, or that is no figure, is not kept and says why", async () => {
  const { page } = opened();
  const terminal = firstTerminal();
  const form = await pressRow(page, terminal);
  const offset = field(page, `terminal ${terminal.id} offset`);
  await offset.fill("three foot");
  await page.keyboard.press("Enter");
  await form.getByRole("alert").waitFor();
  await page.getByLabel("Read and signed by").fill("");
  await offset.fill("36 in");
  await page.keyboard.press("Enter");
  await expect.poll(() => form.getByRole("alert").textContent()).toBe("Write first who read it.");
  expect(readingOf(`terminal ${terminal.id} offset`)).toBeUndefined();
});

test("a deviation is drawn as built: the terminal hangs where it was read, and the finding is gone", async () => {
  const { page, session } = opened();
  const terminal = firstTerminal();
  const form = await readFarOut(page, terminal);
  await form.getByRole("button", { name: "Draw it as built" }).click();
  await expect.poll(deviates).toEqual([]);
  expect(terminalHang(session.plant, terminal.id).fromPoleM).toBeCloseTo(48 * 0.0254, 9);
});

test("a deviation is accepted with a reason; the same place read anew is not accepted with it", async () => {
  const { page } = opened();
  const terminal = firstTerminal();
  const form = await readFarOut(page, terminal);
  await form.getByRole("button", { name: "Waive" }).click();
  await page.getByLabel("Reason").fill("Riser in the way");
  await page.getByLabel("Name", { exact: true }).fill("Ann");
  await page.keyboard.press("Enter");
  await expect.poll(deviates).toEqual([]);
  await field(page, `terminal ${terminal.id} offset`).fill("60 in");
  await page.keyboard.press("Enter");
  await expect.poll(deviates).toHaveLength(1);
});

test("a deviation is put on the punch list, mended, and opened again", async () => {
  const { page, session } = opened();
  const terminal = firstTerminal();
  const form = await readFarOut(page, terminal);
  await form.getByRole("button", { name: "Rework" }).click();
  await page.getByLabel("Assigned").fill("Crew 2");
  await page.getByLabel("Due").fill("2026-04-01");
  await page.getByLabel("Assigned").press("Enter");
  await expect
    .poll(() => [...session.route().punch.values()])
    .toMatchObject([
      {
        number: 1,
        kind: "terminal",
        subjectId: terminal.id,
        ruleId: "built-offset",
        assignedTo: "Crew 2",
        dueIso: "2026-04-01",
      },
    ]);
  await page.getByRole("tab", { name: "Punch list" }).click();
  await page
    .getByRole("table", { name: "Punch list" })
    .getByRole("button", { name: `terminal ${terminal.name}` })
    .click();
  const item = page.getByRole("region", { name: "Punch 1" });
  await item.getByLabel("How it was mended").fill("Hung at 36 in");
  await page.keyboard.press("Enter");
  await item.getByText("Done by R. Vance").waitFor();
  await page.getByText("Nothing on the list is like that.").waitFor();
  await item.getByRole("button", { name: "Open it again" }).click();
  await expect.poll(() => [...session.route().punch.values()][0]?.doneIso).toBe("");
});

test("something is put on the list by hand for what is chosen, with a photo that is scaled down, kept in the file and shown with the readings", async () => {
  const { page, session } = opened();
  const terminal = firstTerminal();
  await rowOf(page, terminal.id).getByRole("rowheader").click();
  await page.getByRole("tab", { name: "Punch list" }).click();
  await page.getByRole("button", { name: `Put on the list: terminal ${terminal.name}` }).click();
  await page.getByLabel("What", { exact: true }).fill("Cap is missing");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: `terminal ${terminal.name}`, exact: true }).click();
  const buffer = await page.locator(".closeout").screenshot();
  await page.getByLabel("Add a photo, before").setInputFiles({ name: "cap.png", mimeType: "image/png", buffer });
  await page.getByRole("img", { name: "Before: Cap is missing" }).waitFor();
  const [photo] = session.route().photo.values();
  expect(photo).toMatchObject({ ...subjectOf("terminal", terminal.id), moment: "before", by: "R. Vance" });
  await page.getByRole("tab", { name: "Board" }).click();
  const form = await pressRow(page, terminal);
  const small = form.getByRole("button", { name: "Photo: Punch item 1, before it was mended: Cap is missing" });
  await form.locator(".thing-photos img").waitFor();
  const smallHigh = (await small.boundingBox())?.height ?? 0;
  await small.press("Enter");
  await expect.poll(() => small.getAttribute("aria-expanded")).toBe("true");
  expect((await small.boundingBox())?.height).toBeGreaterThan(smallHigh);
  await page.getByRole("tab", { name: "Punch list" }).click();
  await page.getByRole("button", { name: "Remove the photo: Before" }).click();
  await page.getByRole("button", { name: "Add a photo, before" }).waitFor();
});

test("the mark on the sheath is written down at a pole between two terminals, and reconciled", async () => {
  const { page, session } = opened();
  const plant = session.plant;
  const [cable] = [...session.route().cable.values()].filter((one) => one.fromClosureId === null);
  const row = closeoutBoard(plant, "").rows.find(({ things, poleId }) =>
    things.some((one) => one.kind === "pole" && one.subjectId !== poleId),
  );
  const pole = row?.things.find((one) => one.kind === "pole" && one.subjectId !== row.poleId);
  const terminal = session.route().terminal.get(row?.terminalId ?? "");
  if (!cable || !pole || !terminal) throw new Error("the demo route has no pole between two terminals");
  await enterBy(page, terminal);
  const { tag } = plant.rowOf("pole", pole.subjectId);
  const mark = page.getByLabel(new RegExp(`^sheath mark, ${cable.name}, .*${tag}$`));
  await mark.focus();
  await page.keyboard.type("12345");
  await page.keyboard.press("Enter");
  await expect.poll(() => readingOf(`pole ${pole.subjectId} ${cable.id} mark`)?.value).toBe(12_345);
  expect(standingOf(session.plant, pole).missing.some((one) => one.what === "mark")).toBe(false);
  await page.getByRole("tab", { name: "Sheath marks" }).click();
  await page.getByText("One mark alone says nothing; read the next.").waitFor();
});

test("two digits exchanged on a mark are pointed out, and taken as they should be", async () => {
  const { page, session } = opened();
  const { plant } = session;
  const [cable] = session.route().cable.values();
  if (!cable) throw new Error("the demo route has no cable");
  const steps = cablePath(plant, cable.id).steps.slice(0, 2);
  const feetTo = (spanId: string, isFar: boolean): number =>
    (sheathToM(plant, cable.id, spanId, isFar ? plant.rowOf("span", spanId).lengthM : 0) ?? 0) / metresPerFoot;
  const ends = steps.map((one) => ({
    poleId: one.outPoleId,
    figure: Math.round(12_000 + feetTo(one.spanId, !one.reversed)),
  }));
  const [second, third] = ends;
  if (!second || !third) throw new Error("the demo cable is too short");
  const mark = (poleId: string, value: number) => {
    const read = { what: "mark", wavelengthNm: 0, value, text: "", by: "R. Vance", atIso: "2026-03-02" };
    session.run("reading.take", { ...subjectOf("pole", poleId, 0, cable.id), ...read });
  };
  const [a, b, c = "", d = "", e] = String(second.figure);
  expect(c).not.toBe(d);
  mark(steps[0]?.inPoleId ?? "", 12_000);
  mark(second.poleId, Number(`${a}${b}${d}${c}${e}`));
  mark(third.poleId, third.figure);
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("d");
  await page.getByRole("tab", { name: "Sheath marks" }).click();
  await page
    .locator(".sheath")
    .getByRole("button", { name: `Take it as ${second.figure}` })
    .click();
  await expect.poll(() => readingOf(`pole ${second.poleId} ${cable.id} mark`)?.value).toBe(second.figure);
  await expect.poll(() => page.getByText("Marks in doubt").count()).toBe(0);
  await expect
    .poll(() => page.getByRole("table", { name: "Sheath between marks" }).getByText("as drawn").count())
    .toBe(2);
});
