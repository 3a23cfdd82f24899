import { copyFileSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Reply } from "../../core/contract/contract.ts";
import { fullScalePxPerM } from "../../renderer/canvas/viewport.ts";
import { groundUnder, scale } from "./diagram.ts";
import { eachOnMachine } from "./eachOnMachine.ts";
import { dropFile, openDemoRoute, type Program } from "./programs.ts";

const { machine } = eachOnMachine();

/** Opens the newest of the recent routes from the start screen. */
async function openRecent(page: Page): Promise<void> {
  await page.getByRole("list", { name: "Recent routes" }).getByRole("button").first().click();
  await page.locator("[data-diagram]").waitFor();
}

/** Scale of the view the program has kept, against 100 %. */
async function keptScale({ host }: Program): Promise<number> {
  const read = await host.call("route.ways", { routeId: "route-1" });
  return read.ok ? ((read.value as Reply<"route.ways">).ways.views.ground?.pxPerM ?? 0) / fullScalePxPerM : 0; // the reply of that method
}

async function widthOf(page: Page, selector: string): Promise<number> {
  return (await page.locator(selector).boundingBox())?.width ?? 0;
}

test("panels, columns and the part of the ground that was looked at are as they were when the program comes back on another port", async () => {
  const first = await machine().start();
  const page = await machine().openPage(first);
  await openDemoRoute(page);
  const plainPx = await widthOf(page, ".side");
  const divider = page.getByRole("separator", { name: "Width of the side panel" });
  await divider.focus();
  for (let press = 0; press < 4; press += 1) await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Control+j");
  await page.keyboard.press("Control+g");
  await page.getByRole("columnheader", { name: /^Class/ }).click();
  await expect
    .poll(() => page.getByRole("columnheader", { name: /^Class/ }).getAttribute("aria-sort"))
    .toBe("ascending");
  await page.keyboard.press("Control+g");
  const stage = await page.locator(".stage").boundingBox();
  if (!stage) throw new Error("the diagram is not on the page");
  await page.mouse.move(stage.x + 300, stage.y + 200);
  await page.mouse.wheel(0, -600);
  const [scaleLeft, groundLeft] = [await scale(page), await groundUnder(page, stage.x + 300, stage.y + 200)];
  await expect.poll(() => keptScale(first)).toBeCloseTo(scaleLeft, 6);
  const panels = () => first.host.call("panels.layout", {});
  await expect.poll(async () => JSON.stringify(await panels())).toMatch(/"isFindingsOpen":false/);
  await first.close();

  const again = await machine().openPage(await machine().start());
  await openRecent(again);
  await again.locator(".findings").waitFor({ state: "detached" });
  expect(await widthOf(again, ".side")).toBe(plainPx + 4 * 16);
  await expect.poll(() => scale(again)).toBeCloseTo(scaleLeft, 6);
  const ground = await groundUnder(again, stage.x + 300, stage.y + 200);
  expect(ground.eastM).toBeCloseTo(groundLeft.eastM, 1);
  expect(ground.northM).toBeCloseTo(groundLeft.northM, 1);
  await again.keyboard.press("Control+g");
  expect(await again.getByRole("columnheader", { name: /^Class/ }).getAttribute("aria-sort")).toBe("ascending");
  await again.getByRole("button", { name: "Put the panels back as they were at first" }).click();
  await again.locator(".findings").waitFor();
  expect(await widthOf(again, ".side")).toBe(plainPx);
});

test("the heights of traces and closeout are as they were left when the program comes back", async () => {
  const rooms = [
    ["Control+Shift+f", "Size of the traces"],
    ["d", "Height of the closeout"],
  ] as const;
  const heights = async (page: Page, change: (name: string) => Promise<void>) => {
    const told: (string | null)[] = [];
    for (const [key, name] of rooms) {
      await page.locator("[data-diagram]").focus();
      await page.keyboard.press(key);
      const divider = page.getByRole("separator", { name });
      await divider.waitFor();
      await change(name);
      told.push(await divider.getAttribute("aria-valuenow"));
      await page.locator("[data-diagram]").focus();
      await page.keyboard.press(key);
      await divider.waitFor({ state: "detached" });
    }
    return told;
  };
  const first = await machine().start();
  const page = await machine().openPage(first);
  await openDemoRoute(page);
  const plain = await heights(page, async () => {});
  const left = await heights(page, async (name) => {
    await page.getByRole("separator", { name }).focus();
    for (let press = 0; press < 3; press += 1) await page.keyboard.press("ArrowDown");
  });
  expect(left).not.toEqual(plain);
  const kept = () => first.host.call("panels.layout", {});
  await expect
    .poll(async () => {
      const { tracesFrac = 0, closeoutFrac = 0 } =
        ((await kept()) as { value: Reply<"panels.layout"> }).value.layout ?? {};
      return [tracesFrac, closeoutFrac].map((one) => String(Math.round(one * 100)));
    })
    .toEqual(left);
  await first.close();
  const again = await machine().openPage(await machine().start());
  await openRecent(again);
  expect(await heights(again, async () => {})).toEqual(left);
});

test("tables opened and a reload between do not move the ground under the eye", async () => {
  const program = await machine().start();
  const page = await machine().openPage(program);
  await openDemoRoute(page);
  await page.locator("[data-diagram]").press("1");
  await expect.poll(() => keptScale(program)).toBeCloseTo(1, 3);
  const before = await groundUnder(page, 200, 150);
  for (let turn = 0; turn < 3; turn += 1) {
    await page.keyboard.press("Control+g");
    await page.locator(".tables").waitFor();
    await page.reload();
    await page.locator("canvas").first().waitFor();
    await expect.poll(() => scale(page)).toBeCloseTo(1, 3);
  }
  const after = await groundUnder(page, 200, 150);
  expect(after.eastM).toBeCloseTo(before.eastM, 1);
  expect(after.northM).toBeCloseTo(before.northM, 1);
});

test("a route file dropped on the window opens: one that is known where it lies, any other as a copy, which is told", async () => {
  const page = await machine().openPage(await machine().start());
  const stranger = join(machine().home, "jobs", "from a stick.strand");
  copyFileSync(machine().demoPath, stranger);
  await dropFile(page, "from a stick.strand", readFileSync(stranger));
  await page.locator("[data-diagram]").waitFor();
  await page
    .getByRole("status")
    .getByText(/from a stick\.strand was taken in as a copy, in .+Strandwright/)
    .waitFor();
  await page.locator(".side").getByText("from a stick.strand").waitFor();
  await dropFile(page, "notes.strand", Buffer.from("no route at all"));
  await page.getByRole("alert").locator("strong").waitFor();
  await page.locator(".side").getByText("from a stick.strand").waitFor();
});

test("the page comes up in the colours that were chosen, before anything on it has run", async () => {
  const program = await machine().start();
  await program.host.call("machine.keep", { theme: "dark", textPercent: 125, keys: {}, recent: [] });
  const page = await machine().openPage(program);
  const dark = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  let letRun: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    letRun = resolve;
  });
  await page.route("**/*.js", async (route) => {
    await held;
    await route.continue();
  });
  await page.reload({ waitUntil: "commit" });
  const body = page.locator("body");
  await body.waitFor({ state: "attached" });
  await expect.poll(() => body.evaluate((one) => getComputedStyle(one).backgroundColor)).toBe(dark);
  expect(await page.evaluate(() => document.documentElement.style.fontSize)).toBe("125%");
  expect(await page.locator("h1").count()).toBe(0);
  letRun();
  await page.locator("h1").waitFor();
  expect(await body.evaluate((one) => getComputedStyle(one).backgroundColor)).toBe(dark);
});
