import { expect, test } from "vitest";
import { moneyText } from "../../core/units/moneyText.ts";
import { bareTown } from "../fixtures/layout/townRoute.ts";
import { selection } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import type { OpenWindow } from "./openWindow.ts";

const { opened, openEmpty } = eachOnDemo();

const panelOf = ({ page }: OpenWindow) => page.getByRole("complementary", { name: "Layout" });

test("how the layout came out is told with its bound, and no longer counts once the route was changed", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+l");
  const panel = panelOf(opened());
  const record = session.route().layoutRecord.get("layout");
  await panel
    .getByText(moneyText(record?.cost ?? Number.NaN))
    .first()
    .waitFor();
  await panel.getByText("proven the cheapest").waitFor();
  await expect.poll(() => panel.getByText("The route was changed since.").count()).toBe(0);
  await page.keyboard.press("Control+k");
  await page.keyboard.type("Terminal T-1");
  await page.getByRole("dialog").getByRole("option").first().waitFor();
  await page.keyboard.press("Enter");
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("ArrowRight");
  await panel.getByText("The route was changed since.").waitFor();
  await page.keyboard.press("Control+z");
  await panel.getByText("The route was changed since.").waitFor({ state: "detached" });
});

test("whom the layout could not serve is stepped through, each shown on the diagram with the reason", async () => {
  const { page, session } = opened();
  const [left] = session.route().unservedUnit.values();
  await page.keyboard.press("Control+l");
  const panel = panelOf(opened());
  const list = panel.getByRole("list", { name: "Living units that are not served" });
  await list.getByText(left?.reason ?? "nobody").waitFor();
  await panel.getByRole("button", { name: "Next" }).click();
  await expect.poll(() => selection(page)).toEqual([left?.livingUnitId]);
  await page.keyboard.press("Escape");
  await list.getByRole("button").first().focus();
  await page.keyboard.press("ArrowDown");
  await expect.poll(() => selection(page)).toEqual([left?.livingUnitId]);
  await page.keyboard.press("Control+l");
  await page
    .getByRole("complementary", { name: "What is chosen" })
    .getByText(left?.reason ?? "nobody")
    .waitFor();
});

test("a search that is stopped keeps the best layout so far, and undo takes it back", async () => {
  const empty = await openEmpty();
  const { page, session } = empty;
  const { pole, span, livingUnit } = bareTown({ poleCount: 40, unitsPerSpan: 12, spanM: 20 });
  const added = Object.entries({ pole, span, livingUnit }).flatMap(([table, rows]) =>
    [...rows.values()].map((after) => ({ table, id: after.id, before: null, after }) as never),
  );
  expect(session.take("Bring in a town", added)).toMatchObject({ ok: true });
  await page.reload();
  await page.getByRole("button", { name: "Lay out terminals" }).click();
  await page.getByText(/Lay out terminals: cost .* bound .* above the cheapest/).waitFor();
  await page.getByRole("button", { name: "Stop and keep the best" }).click();
  await page.getByRole("status").filter({ hasText: "Stopped and laid out as it was best so far" }).waitFor();
  const record = session.route().layoutRecord.get("layout");
  expect(record).toMatchObject({ ended: "stopped", servedCount: livingUnit.size });
  expect(session.route().terminal.size).toBeGreaterThan(20);
  await panelOf(empty).getByText("The search was stopped by hand").waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().terminal.size).toBe(0);
  expect(empty.complaints).toEqual([]);
  await empty.close();
});
