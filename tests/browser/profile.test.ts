import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { profileAlong, profileOf } from "../../core/plant/profile.ts";
import type { RefKey } from "../../renderer/app/ref.ts";
import type { ProfileHandle } from "../../renderer/profile/profileHandle.ts";
import { selection } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo(async ({ page }) => {
  await page.keyboard.press("Control+e");
  await page.getByRole("region", { name: "Profile", exact: true }).waitFor();
  await expect.poll(() => page.evaluate(() => window.__profile !== undefined)).toBe(true);
});

const hand = (page: Page) => page.locator("[data-profile]");

const shownWay = (page: Page) => page.getByRole("combobox", { name: "Cable or strand" });

async function shownCableId(page: Page): Promise<string> {
  return (await shownWay(page).inputValue()).replace("cable/", "");
}

/** Middle of a row on the profile, in page pixels. */
async function onProfile(page: Page, ref: RefKey): Promise<NonNullable<ReturnType<ProfileHandle["toScreen"]>>> {
  const point = await page.evaluate((wanted) => window.__profile?.toScreen(wanted) ?? null, ref);
  if (!point) throw new Error(`${ref} is not on the profile`);
  return point;
}

/** Shows the span of the demo's first strand attachment from near, so that attachments stand apart; answers with the attachment. */
async function nearStrand() {
  const { page, session } = opened();
  const cableId = await shownCableId(page);
  const { poles } = profileOf(session.plant, cableId);
  const pole = poles[1];
  const strand = pole?.attachments.find((one) => one.kind === "ourStrand");
  if (!pole || !strand) throw new Error("the demo's second pole carries no strand");
  await hand(page).focus();
  for (let step = 0; step < 40; step += 1) {
    await page.keyboard.press("ArrowRight");
    if ((await selection(page))[0] === pole.poleId) break;
  }
  expect(await selection(page)).toEqual([pole.poleId]);
  await page.keyboard.press("2");
  return { pole, strand };
}

describe("the profile", () => {
  test("is walked by keys from station to station, and the diagram follows", async () => {
    const { page } = opened();
    await hand(page).focus();
    await page.keyboard.press("ArrowRight");
    await page.locator("[data-card=station]").waitFor();
    const [first] = await selection(page);
    await page.keyboard.press("ArrowRight");
    await expect.poll(async () => (await selection(page))[0]).not.toBe(first);
    await page.keyboard.press("ArrowLeft");
    await expect.poll(async () => (await selection(page))[0]).toBe(first);
    expect(await page.locator("[data-card=station]").textContent()).toContain("Limit");
  });

  test("follows what is chosen on the diagram, and a click on it chooses there", async () => {
    const { page, session } = opened();
    const [terminal] = session.route().terminal.values();
    if (!terminal) throw new Error("the demo has no terminal");
    await page.keyboard.press("Control+k");
    await page.keyboard.type(`Terminal ${terminal.name}`);
    await page.getByRole("dialog").getByRole("option").first().waitFor();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("[data-card=station]").count()).toBe(1);
    const { pole } = await nearStrand();
    const foot = await onProfile(page, `pole/${pole.poleId}`);
    await page.keyboard.press("ArrowRight");
    expect(await selection(page)).not.toEqual([pole.poleId]);
    await page.mouse.click(foot.x, foot.y + 4);
    await expect.poll(() => selection(page)).toEqual([pole.poleId]);
  });

  test("another cable picked here stays, though something on the first is chosen; what is chosen next brings its own", async () => {
    const { page } = opened();
    const { pole } = await nearStrand();
    const [first, second] = await shownWay(page)
      .locator("option")
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value)); // a select holds nothing else
    if (!(first && second)) throw new Error("the demo has one cable only");
    await shownWay(page).selectOption(second);
    await expect
      .poll(() => page.evaluate((ref) => window.__profile?.toScreen(ref) ?? null, `pole/${pole.poleId}` as const))
      .toBeNull();
    expect(await shownWay(page).inputValue()).toBe(second);
    await hand(page).focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => selection(page)).not.toEqual([pole.poleId]);
    expect(await shownWay(page).inputValue()).toBe(second);
  });

  test("strand without a cable is shown too", async () => {
    const { page, session } = opened();
    const cableId = await shownCableId(page);
    const [run] = [...session.route().cableRun.values()].filter((one) => one.cableId === cableId).slice(-1);
    const sectionId = run && session.plant.rowOf("span", run.spanId).strandSectionId;
    if (!(run && sectionId)) throw new Error("the demo's cable lies on strand");
    session.run("row.remove", { table: "cableRun", id: run.id });
    await page.reload();
    await page.locator("canvas").first().waitFor();
    await page.keyboard.press("Control+e");
    await shownWay(page).selectOption(`strandSection/${sectionId}`);
    const [step] = profileAlong(session.plant, { table: "strandSection", id: sectionId }).steps;
    await expect
      .poll(() => page.evaluate((ref) => window.__profile?.toScreen(ref) ?? null, `span/${step?.span.spanId}` as const))
      .not.toBeNull();
    await hand(page).focus();
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    expect(await page.locator("[data-card=station]").textContent()).toContain("Iced");
  });

  test("an attachment is dragged down with its height and the clearances told live; letting go is one edit, undo takes it back", async () => {
    const { page, session } = opened();
    const { strand } = await nearStrand();
    const from = await onProfile(page, `attachment/${strand.id}`);
    const before = (await page.evaluate((y) => window.__profile?.elevationM(y), from.y)) ?? 0;
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, from.y + 10);
    await page.mouse.move(from.x, from.y + 24);
    const card = page.locator("[data-card=held]");
    await card.waitFor();
    expect(await card.textContent()).toMatch(/over .*limit/);
    expect(session.route().attachment.get(strand.id)?.heightM).toBe(strand.heightM);
    const wanted = (await page.evaluate((y) => window.__profile?.elevationM(y), from.y + 24)) ?? 0;
    await page.mouse.up();
    await page.getByRole("button", { name: /^Undo change attachment height/ }).waitFor();
    const hung = session.route().attachment.get(strand.id)?.heightM ?? 0;
    // whole inches
    expect(Math.abs(strand.heightM - hung - (before - wanted))).toBeLessThan(0.0128);
    expect(Math.abs(hung / 0.0254 - Math.round(hung / 0.0254))).toBeLessThan(1e-6);
    await card.waitFor({ state: "detached" });
    await page.keyboard.press("Control+z");
    await expect.poll(() => session.route().attachment.get(strand.id)?.heightM).toBe(strand.heightM);
  });

  test("Escape gives a drag up while the button is down; nothing has changed", async () => {
    const { page, session } = opened();
    const { strand } = await nearStrand();
    const from = await onProfile(page, `attachment/${strand.id}`);
    const { undo } = session.history();
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, from.y + 30);
    await page.locator("[data-card=held]").waitFor();
    await page.keyboard.press("Escape");
    await page.locator("[data-card=held]").waitFor({ state: "detached" });
    await page.mouse.move(from.x, from.y + 50);
    await page.mouse.up();
    expect(session.route().attachment.get(strand.id)?.heightM).toBe(strand.heightM);
    expect(await onProfile(page, `attachment/${strand.id}`)).toEqual(from);
    expect(session.history().undo).toBe(undo);
  });

  test("by keys alone an attachment is chosen and its height typed; what cannot be read changes nothing", async () => {
    const { page, session } = opened();
    const { pole } = await nearStrand();
    const lowest = pole.attachments[0];
    if (!lowest) throw new Error("the pole is bare");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Enter");
    const field = page.getByRole("textbox", { name: /^Height of/ });
    await field.waitFor();
    await page.keyboard.type("high");
    await page.keyboard.press("Enter");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    expect(session.route().attachment.get(lowest.id)?.heightM).toBe(lowest.heightM);
    await field.fill("17' 3\"");
    await page.keyboard.press("Enter");
    await expect.poll(() => session.route().attachment.get(lowest.id)?.heightM).toBeCloseTo(17.25 * 0.3048, 9);
    await field.waitFor({ state: "detached" });
    await page.keyboard.press("Control+z");
    await expect.poll(() => session.route().attachment.get(lowest.id)?.heightM).toBe(lowest.heightM);
  });

  test("a wire of another party is dragged too", async () => {
    const { page, session } = opened();
    const { pole } = await nearStrand();
    const other = pole.attachments.find((one) => one.kind === "neutral" || one.kind === "communication");
    if (!other) throw new Error("nobody else is on the pole");
    const from = await onProfile(page, `attachment/${other.id}`);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, from.y - 12);
    expect(await page.locator("[data-card=held]").textContent()).toContain("our strand at the pole");
    await page.mouse.up();
    await expect.poll(() => session.route().attachment.get(other.id)?.heightM).toBeGreaterThan(other.heightM);
  });

  test("its twin for who hears it names every pole and the least clearance of its spans", async () => {
    const { page, session } = opened();
    const cableId = await shownCableId(page);
    const { poles } = profileOf(session.plant, cableId);
    const list = page.locator("#described-profile li");
    const words = await list.allTextContents();
    expect(words.filter((one) => one.startsWith(`Pole ${poles[0]?.tag},`))).toHaveLength(1);
    expect(words.some((one) => one.includes("Least over"))).toBe(true);
  });

  test("the strand of the span at hand is strung tighter and hangs higher at once; leaving the field ends the one step of undo", async () => {
    const { page, session } = opened();
    const { pole } = await nearStrand();
    const cableId = await shownCableId(page);
    const step = profileOf(session.plant, cableId).steps.findLast((one) => one.startM <= pole.stationM);
    const sectionId = session.plant.rowOf("span", step?.span.spanId ?? "").strandSectionId ?? "";
    const sagFrac = () => session.route().strandSection.get(sectionId)?.stringingSagFrac ?? Number.NaN;
    const before = sagFrac();
    const undoBefore = session.history().undo;
    const field = page.getByRole("spinbutton", { name: /^Stringing sag of/ });
    const tension = () => page.locator(".profile-tension output").textContent();
    const strung = await tension();
    await field.fill("0.8");
    await expect.poll(sagFrac).toBeCloseTo(0.008, 9);
    await field.press("ArrowUp");
    await expect.poll(sagFrac).toBeCloseTo(0.0085, 9);
    await expect.poll(tension).not.toBe(strung);
    await hand(page).focus();
    await page.getByRole("button", { name: /^Undo change/i }).waitFor();
    await page.keyboard.press("Control+z");
    await expect.poll(sagFrac).toBe(before);
    expect(session.history().undo).toEqual(undoBefore);
  });

  test("resting on a station tells height and clearance in every case, and the size it was given is kept", async () => {
    const { page } = opened();
    const box = await hand(page).boundingBox();
    if (!box) throw new Error("the profile is not on the page");
    await page.mouse.move(box.x + box.width / 2, box.y + 30);
    const card = page.locator("[data-card=station]");
    await card.waitFor();
    const cases = await card.locator("tbody th").allTextContents();
    expect(cases).toEqual(["Strung", "Hot", "Iced"]);
    for (const cell of await card.locator("tbody td:nth-of-type(1)").allTextContents()) expect(cell).toMatch(/\d/);
    const divider = page.getByRole("separator", { name: "Size of the profile" });
    await divider.focus();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => divider.getAttribute("aria-valuenow")).toBe("63");
    await page.reload();
    await page.locator("canvas").first().waitFor();
    await page.keyboard.press("Control+e");
    await expect.poll(() => divider.getAttribute("aria-valuenow")).toBe("63");
  });
});
