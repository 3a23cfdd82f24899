import { expect, test } from "vitest";
import { makeReady } from "../../core/jointpole/makeReady.ts";
import { spansAt } from "../../core/jointpole/spanAtPole.ts";
import { strandAtPole } from "../../core/plant/strandHeight.ts";
import { scale } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { pressOn, sideOf } from "./panelHands.ts";

/** A pole in the middle of the line that carries our strand and the neutral of another party. */
function jointPole() {
  const { session } = opened();
  for (const attachment of session.route().attachment.values()) {
    const { poleId } = attachment;
    const ours = strandAtPole(session.plant, poleId);
    if (attachment.kind === "neutral" && ours.attachmentId !== null && spansAt(session.plant, poleId).length === 2)
      return { poleId, neutralId: attachment.id, ours: { id: ours.attachmentId, heightM: ours.heightM } };
  }
  throw new Error("the demo has no joint pole");
}

const { opened } = eachOnDemo();

const section = () => sideOf(opened().page).getByRole("region", { name: "Heights for our strand" });

test("a pole tells the heights that satisfy everything, each end explained, and one press puts our strand among them", async () => {
  const { page, session } = opened();
  const { poleId, neutralId, ours } = jointPole();
  const lowered = session.run("attachment.set", { attachmentId: neutralId, heightM: ours.heightM + 0.5 });
  expect(lowered.ok).toBe(true);
  await page.reload();
  await expect.poll(() => scale(page)).toBeGreaterThan(0);
  await pressOn(page, poleId);
  await section().getByText("not among them").waitFor();
  const end = section()
    .getByRole("button", { name: /^at most / })
    .first();
  await end.focus();
  await page.keyboard.press("?");
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  expect(await card.textContent()).toMatch(/Highest height for our strand at pole .*What must be kept/s);
  await page.keyboard.press("Escape");
  await card.waitFor({ state: "detached" });
  expect(makeReady(session.plant, poleId).kind).not.toBe("nothing");
  await section()
    .getByRole("button", { name: /^Put .* on pole/ })
    .first()
    .click();
  await expect.poll(() => makeReady(session.plant, poleId).kind).toBe("nothing");
  await section().getByText(": among them").waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => strandAtPole(session.plant, poleId).heightM).toBeCloseTo(ours.heightM, 9);
});

test("an attachment of another party tells how ours stands to it on the same pole", async () => {
  const { page } = opened();
  const { poleId } = jointPole();
  await pressOn(page, poleId);
  await sideOf(page).getByRole("button", { name: "neutral", exact: true }).click();
  await sideOf(page)
    .getByRole("heading", { name: /^Neutral of .* on pole / })
    .waitFor();
  await section()
    .getByText(/^Attached at .*: among them\.$/)
    .waitFor();
  await sideOf(page).getByText("Above ours").waitFor();
});
