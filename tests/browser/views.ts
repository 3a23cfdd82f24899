import { subjectOf } from "../../core/closeout/subject.ts";
import { catalogueWords } from "../../renderer/settings/words.ts";
import { kinds } from "../../renderer/tables/kinds.ts";
import { pointOf } from "./diagram.ts";
import type { OpenWindow } from "./openWindow.ts";
import { showTraces } from "./traceFiles.ts";

/** A view of the window, and the keys and clicks that lead to it from the diagram. */
type View = readonly [name: string, go: (opened: OpenWindow) => Promise<void>];

/** Every view of the window. */
export const views: readonly View[] = [
  ["the diagram", async () => {}],
  ["a chosen terminal", chooseTerminal],
  ["the diagram with its lettering", chooseTerminalClose],
  [
    "the straightened route",
    async ({ page }) => {
      await page.locator("[data-diagram]").focus();
      await page.keyboard.press("r");
      await page.locator(".ruler").waitFor();
    },
  ],
  ...kinds.map(({ name }): View => [`the table: ${name}`, (opened) => showTable(opened, name)]),
  [
    "the profile",
    async ({ page }) => {
      await page.keyboard.press("Control+e");
      await page.locator("[data-profile]").focus();
      await page.keyboard.press("ArrowRight");
      await page.locator("[data-card=station]").waitFor();
    },
  ],
  [
    "the traces",
    async (opened) => {
      await opened.page.keyboard.press("Control+Shift+f");
      await showTraces(opened);
    },
  ],
  [
    "the balance of ports",
    async ({ page }) => {
      await page.keyboard.press("Control+u");
      await page.locator(".ports-grid").focus();
      await page.keyboard.press("ArrowDown");
      await page.locator(".balance-foot form").first().waitFor();
    },
  ],
  [
    "a unit in the hand over another terminal",
    async ({ page }) => {
      await page.keyboard.press("Control+u");
      await page.locator(".ports-grid").focus();
      for (const key of ["ArrowDown", "Enter", "ArrowDown"]) await page.keyboard.press(key);
      await page.locator("[data-card=move]").waitFor();
    },
  ],
  ...["Fibers by tube", "Hub outputs by leg", "Light by terminal"].map(
    (name): View => [
      `the balance: ${name}`,
      async ({ page }) => {
        await page.keyboard.press("Control+u");
        await page.getByRole("tab", { name }).click();
      },
    ],
  ),
  [
    "the closeout with the readings of a terminal",
    async (opened) => {
      await showCloseout(opened);
      await opened.page.locator(".board-grid [data-row]").first().getByRole("rowheader").click();
      await opened.page.locator("[data-entry]").waitFor();
    },
  ],
  [
    "the punch list with an item",
    async (opened) => {
      await showCloseout(opened);
      await opened.page.getByRole("tab", { name: "Punch list" }).click();
      await opened.page.locator("[data-punch]").first().click();
      await opened.page.getByRole("region", { name: "Punch 1" }).waitFor();
    },
  ],
  [
    "the marks of a sheath",
    async (opened) => {
      await showCloseout(opened);
      await opened.page.getByRole("tab", { name: "Sheath marks" }).click();
      await opened.page.getByRole("table", { name: "Sheath between marks" }).waitFor();
    },
  ],
  [
    "the findings with one explained",
    async ({ page }) => {
      await page.locator(".finding-fixes button[aria-expanded]").first().click();
    },
  ],
  [
    "the history",
    async ({ page }) => {
      await page.getByRole("button", { name: /^Switch to (metric|feet)/ }).click();
      await page.keyboard.press("Control+h");
      await page.getByRole("complementary", { name: "History" }).locator("li").first().waitFor();
    },
  ],
  [
    "the sign-off with its gates",
    async ({ page }) => {
      await page.keyboard.press("Control+Shift+g");
      await page.getByRole("complementary", { name: "Sign-off" }).locator(".gate").first().waitFor();
    },
  ],
  [
    "the revisions with one asked for",
    async ({ page, session }) => {
      const why = { letter: "A", dateIso: "2026-03-02", by: "Ann", checkedBy: "", reason: "For review" };
      session.run("revision.issue", { revisionId: "revision-A", ...why });
      await page.reload();
      await page.locator("canvas").first().waitFor();
      await page.keyboard.press("Control+Shift+e");
      await page.getByRole("button", { name: "Approve revision A" }).click();
      await page.getByRole("form", { name: "Approve revision A" }).waitFor();
    },
  ],
  [
    "the field packets with two readings that disagree",
    async ({ page, session }) => {
      const [terminal] = session.route().terminal.keys();
      const signed = { by: "Ann", atIso: "2026-03-02T08:00:00.000Z" };
      const thing = { kind: "terminal", subjectId: terminal ?? "", port: 0, alongId: "" } as const;
      const offset = { ...thing, what: "offset", wavelengthNm: 0, text: "", ...signed } as const;
      session.run("packet.give", {
        packetId: "packet-1",
        crew: "North",
        terminalIds: [terminal],
        wavelengthsNm: [],
        ...signed,
      });
      session.run("reading.take", { ...offset, value: 0.9 });
      const [standing] = session.route().reading.keys();
      const rival = {
        id: "rival-1",
        readingId: standing ?? "",
        packetId: "packet-1",
        ...offset,
        value: 0.8,
        madeOn: "",
      };
      session.take("Bring in", [{ table: "rivalReading", id: rival.id, before: null, after: rival }]);
      await page.reload();
      await page.locator("canvas").first().waitFor();
      await page.keyboard.press("Control+Shift+k");
      const panel = page.getByRole("complementary", { name: "Field packets" });
      await panel.getByRole("button", { name: "Give a crew a packet" }).click();
      await panel.getByRole("button", { name: /^Take what North brought/ }).waitFor();
    },
  ],
  [
    "the layout",
    async ({ page }) => {
      await page.keyboard.press("Control+l");
      await page.getByRole("complementary", { name: "Layout" }).getByRole("button", { name: "Next" }).click();
    },
  ],
  [
    "another layout tried",
    async ({ page }) => {
      await page.locator("[data-diagram]").focus();
      await page.keyboard.press("w");
      const panel = page.getByRole("complementary", { name: "What if" });
      await panel.getByLabel("Drop reach").fill("230 ft");
      await panel.getByLabel("Drop reach").press("Enter");
      await panel.getByRole("button", { name: "Try it" }).click();
      await panel.getByRole("table", { name: "Both layouts" }).waitFor();
      await panel.getByLabel("Show it on the diagram").check();
      await panel.getByRole("list", { name: "What the other layout has otherwise" }).waitFor();
    },
  ],
  ["the start", start],
  [
    "the form of a new route",
    async (opened) => {
      await start(opened);
      await opened.page.getByRole("button", { name: "Start a new route" }).click();
      await opened.page.getByRole("form", { name: "Start a new route" }).waitFor();
    },
  ],
  ["the import", ({ page }) => page.keyboard.press("Control+i")],
  [
    "an import as it will be read",
    async ({ page }) => {
      await page.keyboard.press("Control+i");
      const list = "tag,lat,lon,height\nP-900,41.1,-85.1,30 ft\nP-901,nowhere,-85.1,tall\n";
      await page
        .getByLabel("File", { exact: true })
        .setInputFiles({ name: "poles.csv", mimeType: "text/csv", buffer: Buffer.from(list) });
      await page.getByRole("table", { name: "First rows" }).waitFor();
    },
  ],
  [
    "the copies and backups",
    async ({ page }) => {
      await page.getByRole("button", { name: "Show copies and backups" }).click();
      await page.getByRole("complementary", { name: "Copies and backups" }).waitFor();
    },
  ],
  [
    "the sheets",
    async ({ page }) => {
      await page.getByRole("button", { name: "Preview sheets" }).click();
      await page.locator(".paper svg").first().waitFor();
    },
  ],
  ...["Company standards", ...Object.values(catalogueWords)].map(
    (section): View => [
      `the settings: ${section}`,
      async ({ page }) => {
        await page.keyboard.press("Control+,");
        await page
          .getByRole("navigation", { name: "Sections" })
          .getByRole("button", { name: section, exact: true })
          .click();
      },
    ],
  ),
  [
    "the finder",
    async ({ page }) => {
      await page.keyboard.press("Control+k");
      await page.keyboard.type("pole");
      await page.getByRole("dialog").getByRole("option").first().waitFor();
    },
  ],
  [
    "the key sheet",
    async ({ page }) => {
      await page.locator("[data-diagram]").focus();
      await page.keyboard.press("?");
      await page.getByRole("dialog").waitFor();
    },
  ],
  [
    "the help",
    async ({ page }) => {
      await page.keyboard.press("F1");
      await page.getByRole("button", { name: "Rule book" }).waitFor();
    },
  ],
  [
    "the rule book",
    async ({ page }) => {
      await page.keyboard.press("F1");
      await page.getByRole("button", { name: "Rule book" }).click();
    },
  ],
  [
    "an explanation",
    async (opened) => {
      await chooseTerminal(opened);
      await opened.page.locator(".side .explained").first().click();
      await opened.page.locator(".explanation").first().waitFor();
    },
  ],
  [
    "a worksheet",
    async (opened) => {
      await chooseTerminal(opened);
      await opened.page.locator(".side .explained").first().click();
      await opened.page.locator(".explanation").getByRole("button", { name: "Worksheet" }).click();
      await opened.page.getByRole("dialog", { name: "Worksheet" }).waitFor();
    },
  ],
  [
    "the menu of a thing",
    async (opened) => {
      await chooseTerminalClose(opened);
      const { x, y } = await pointOf(opened.page, terminalOf(opened).id);
      await opened.page.mouse.click(x, y, { button: "right" });
      await opened.page.getByRole("menu").waitFor();
    },
  ],
  [
    "the kinds and the measure",
    async ({ page }) => {
      await page.locator("[data-diagram]").focus();
      await page.keyboard.press("k");
      await page.locator("[data-diagram]").focus();
      await page.keyboard.press("m");
    },
  ],
  [
    "the guided look",
    async ({ page }) => {
      await page.getByRole("button", { name: "Take a look round in three steps" }).click();
      await page.getByRole("region", { name: "A look round" }).waitFor();
    },
  ],
];

/** The closeout of a terminal that was read in part, with an item on the punch list. */
async function showCloseout(opened: OpenWindow): Promise<void> {
  const { page, session } = opened;
  const terminal = terminalOf(opened);
  const signed = { by: "R. Vance", atIso: "2026-03-02" };
  const thing = subjectOf("terminal", terminal.id);
  const read = (what: string, value: number) =>
    session.run("reading.take", { ...thing, what, wavelengthNm: 0, value, text: "", ...signed });
  read("offset", 1.2);
  read("markBefore", 12_000);
  read("markAfter", 12_040);
  session.run("milestone.reach", { subjects: [thing], state: "built", ...signed });
  const open = { ruleId: "", subjects: "", assignedTo: "", dueIso: "2026-01-01" };
  session.run("punch.add", { punchId: "punch-1", ...thing, what: "Cap is missing", ...open, ...signed });
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("d");
  await page.locator(".board-grid").waitFor();
}

function terminalOf({ session }: OpenWindow) {
  const [terminal] = session.route().terminal.values();
  if (!terminal) throw new Error("the demo route has no terminal");
  return terminal;
}

async function chooseTerminal(opened: OpenWindow): Promise<void> {
  const { page } = opened;
  const { name } = terminalOf(opened);
  await page.keyboard.press("Control+k");
  await page.keyboard.type(`Terminal ${name}`);
  await page.getByRole("dialog").getByRole("option").first().waitFor();
  await page.keyboard.press("Enter");
  await page
    .locator(".side")
    .getByRole("heading", { name: `Terminal ${name}` })
    .waitFor();
}

async function chooseTerminalClose(opened: OpenWindow): Promise<void> {
  await chooseTerminal(opened);
  await opened.page.locator("[data-diagram]").focus();
  await opened.page.keyboard.press("2");
}

async function showTable({ page }: OpenWindow, name: string): Promise<void> {
  await page.keyboard.press("Control+g");
  await page.getByRole("tab", { name, exact: true }).click();
  await page.getByRole("grid", { name, exact: true }).waitFor();
}

async function start({ page }: OpenWindow): Promise<void> {
  await page.keyboard.press("Control+o");
  await page.locator(".start").first().waitFor();
}
