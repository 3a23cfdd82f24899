import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { attachmentRange } from "../../core/jointpole/attachmentRange.ts";
import { strandAtPole } from "../../core/plant/strandHeight.ts";
import { metresPerInch } from "../../core/units/constants.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { take } from "./addingHands.ts";
import { pointOf } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { pressOn, sideOf } from "./panelHands.ts";

const { opened } = eachOnDemo();

/** A pole with our strand that has a foot of room below it. */
function roomyPole(): { readonly poleId: string; readonly heightM: number } {
  const { session } = opened();
  for (const poleId of session.route().pole.keys()) {
    const range = attachmentRange(session.plant, poleId);
    if (range.kind === "unknown" || range.present.attachmentId === null) continue;
    const { heightM } = range.present;
    if (range.free.some(({ fromM, toM }) => fromM < heightM - 0.3 && toM >= heightM)) return { poleId, heightM };
  }
  throw new Error("the demo has no pole with room below our strand");
}

type Given = { readonly kind: string; readonly heightM: number; readonly bonded?: "yes" | "no" };

/** Adds an attachment by hand to a pole that is on the page, the tool in hand. */
async function addByHand(page: Page, poleId: string, { kind, heightM, bonded = "no" }: Given): Promise<void> {
  const { x, y } = await pointOf(page, poleId);
  await page.mouse.click(x, y);
  const form = page.locator(".adding-strip form");
  await form.getByLabel("Owner").fill("Town lights");
  await form.getByLabel("Kind").selectOption({ label: kind });
  await form.getByLabel("Height", { exact: true }).fill(formatLength(heightM, "us", "height"));
  await form.getByLabel("Grounded and bonded").selectOption(bonded);
  await page.keyboard.press("Enter");
}

const lights = () => [...opened().session.route().attachment.values()].filter((one) => one.owner === "Town lights");

test("a street-light bracket with a drip loop over our strand is added by hand, found too near, and mended by one press", async () => {
  const { page, session } = opened();
  const { poleId, heightM } = roomyPole();
  const over = (inches: number) => Math.round(heightM / metresPerInch + inches) * metresPerInch;
  await pressOn(page, poleId);
  await take(page, "a", "Add an attachment");
  await addByHand(page, poleId, { kind: "Street-light bracket", heightM: over(19) });
  await expect.poll(() => lights().length).toBe(1);
  await addByHand(page, poleId, { kind: "Drip loop of a street light", heightM: over(6) });
  await expect.poll(() => lights().map(({ kind }) => kind)).toEqual(["streetLight", "dripLoop"]);
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await pressOn(page, poleId);
  const side = sideOf(page);
  await side.getByText(/our strand is too close to the street-light bracket of Town lights/).waitFor();
  await side.getByText(/our strand is not far enough below the street-light drip loop of Town lights/).waitFor();
  await side
    .getByRole("button", { name: /^Move our attachment at pole/ })
    .first()
    .click();
  await expect.poll(() => strandAtPole(session.plant, poleId).heightM).toBeLessThan(heightM - 5 * metresPerInch);
  await side.getByText(/our strand is .* of Town lights/).waitFor({ state: "detached" });
});

test("a grounded bracket may be 4 in away; its row says what is kept, and that nobody has read the figure", async () => {
  const { page } = opened();
  const { poleId, heightM } = roomyPole();
  const nearM = Math.round(heightM / metresPerInch + 5) * metresPerInch;
  await pressOn(page, poleId);
  await take(page, "a", "Add an attachment");
  await addByHand(page, poleId, { kind: "Street-light bracket", heightM: nearM, bonded: "yes" });
  await expect.poll(() => lights()).toMatchObject([{ kind: "streetLight", bonded: true }]);
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await pressOn(page, poleId);
  const side = sideOf(page);
  await side.getByRole("button", { name: "street-light bracket", exact: true }).click();
  await side.getByRole("heading", { name: /^Street-light bracket of Town lights on pole / }).waitFor();
  await side.getByText("To be kept").waitFor();
  expect(await side.textContent()).toMatch(/To be kept4 in.*T238-2.*unverified/s);
});
