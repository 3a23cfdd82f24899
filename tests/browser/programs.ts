import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import type { Reply } from "../../core/contract/contract.ts";
import type { Row, TableName } from "../../core/model/tables.ts";
import { type Host, openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { makeDemoRoute } from "../../electron/host/makeDemoRoute.ts";
import type { Stamp } from "../../electron/host/session.ts";
import { jobsInThread } from "../../electron/host/thread.ts";
import { type Loopback, openLoopback } from "../../electron/loopback/server.ts";
import { slowDown } from "./openWindow.ts";

const root = resolve(import.meta.dirname, "../..");
const assetsFolder = join(root, "assets");

/** The program as a person starts it: a host that may look for files, and the address its window is at. */
export type Program = { readonly host: Host; readonly loopback: Loopback; readonly close: () => Promise<void> };

/** A machine of its own: a home folder with the demo route in it, and the programs started there. */
export type Machine = {
  readonly home: string;
  readonly demoPath: string;
  /** Starts the program for a person, with nothing open; each person keeps their own ways. */
  readonly start: (author?: string, port?: number) => Promise<Program>;
  /** A page on a program, in a browser that remembers nothing. */
  readonly openPage: (program: Program, desk?: BrowserContextOptions) => Promise<Page>;
  /** Another page in the browser of this one. */
  readonly besides: (page: Page, program: Program) => Promise<Page>;
  readonly close: () => Promise<void>;
};

/** Makes the demo route once; answers with how to set up machines that have a copy of it. */
export async function makeMachines(): Promise<{
  readonly setUp: (browser: Browser) => Machine;
  readonly remove: () => void;
}> {
  const folder = mkdtempSync(join(tmpdir(), "strandwright-demo-"));
  const original = join(folder, "marrow-bend.strand");
  const made = await makeDemoRoute(original, assetsFolder, stampOf("Field"), runJobHere);
  if (!made.ok) throw new Error(made.fault.what);
  made.value.close();
  return { setUp: (browser) => setUp(browser, original), remove: () => rmSync(folder, { recursive: true }) };
}

/** Signs edits with a name and the machine's clock. */
export function stampOf(author: string): Stamp {
  return { author, nowIso: () => new Date().toISOString() };
}

function setUp(browser: Browser, original: string): Machine {
  const folder = mkdtempSync(join(tmpdir(), "strandwright-start-"));
  const home = join(folder, "home");
  const demoPath = join(home, "marrow-bend.strand");
  mkdirSync(join(home, "jobs"), { recursive: true });
  copyFileSync(original, demoPath);
  const programs: Program[] = [];
  const contexts: BrowserContext[] = [];
  return {
    home,
    demoPath,
    async start(author = "Field", port = 0) {
      const configFolder = join(folder, `config-${author}`);
      const files = { configFolder, roots: [home], assetsFolder, demoPath, stamp: stampOf(author) };
      const program = await startProgram(files, port);
      programs.push(program);
      return program;
    },
    async openPage(program, desk = {}) {
      const plain = { viewport: { width: 1280, height: 800 }, reducedMotion: "reduce" } as const;
      const context = await browser.newContext({ ...plain, ...desk });
      context.setDefaultTimeout(30_000);
      contexts.push(context);
      return goTo(context, program);
    },
    besides: (page, program) => goTo(page.context(), program),
    async close() {
      for (const context of contexts) await context.close();
      for (const program of programs) await program.close();
      rmSync(folder, { recursive: true });
    },
  };
}

async function startProgram(
  files: NonNullable<Parameters<typeof openHost>[0]["files"]>,
  port: number,
): Promise<Program> {
  const runJob = jobsInThread(new URL("../../.build/app/worker.mjs", import.meta.url));
  const host = openHost({ runJob, report: (error) => console.error(error), files });
  const loopback = await openLoopback(host, join(root, ".build", "renderer"), port);
  return {
    host,
    loopback,
    async close() {
      await loopback.close();
      host.close();
    },
  };
}

async function goTo(context: BrowserContext, { loopback }: Program): Promise<Page> {
  const page = await context.newPage();
  await slowDown(page);
  await page.goto(`${loopback.url}&view-handle`);
  await page.locator("h1").waitFor();
  return page;
}

/** Opens the demo route from the start screen and skips the look round. */
export async function openDemoRoute(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Open the demo route" }).click();
  await page.locator("[data-diagram]").waitFor();
  await page.getByRole("button", { name: "Skip" }).click();
}

/** Makes a route in the folder `jobs` of the home folder from the start screen. */
export async function startNewRoute(page: Page, machine: Machine, name: string): Promise<void> {
  await page.getByRole("button", { name: "Start a new route" }).click();
  const form = page.getByRole("form", { name: "Start a new route" });
  await form.getByLabel("Route name").fill(name);
  await form.getByLabel("Place").fill("Elm Street");
  await form.getByRole("button", { name: "jobs/" }).click();
  await form.getByText(join(machine.home, "jobs"), { exact: true }).waitFor();
  await form.getByRole("button", { name: "Make the route" }).click();
  await page.getByRole("heading", { level: 1, name }).waitFor();
}

/** Lets a file fall onto the window as the hand would. */
export async function dropFile(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  const transfer = await page.evaluateHandle(
    ([fileName, base64]) => {
      const made = new DataTransfer();
      const content = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
      made.items.add(new File([content], fileName));
      return made;
    },
    [name, Buffer.from(bytes).toString("base64")] as const,
  );
  await page.dispatchEvent("main", "dragover", { dataTransfer: transfer });
  await page.dispatchEvent("main", "drop", { dataTransfer: transfer });
}

/** The rows of a table of the first open route, read through the contract as the window reads them. */
export async function rowsOf<T extends TableName>({ host }: Program, table: T): Promise<readonly Row<T>[]> {
  const list = await host.call("route.list", {});
  if (!list.ok) throw new Error(list.fault.what);
  const [first] = (list.value as Reply<"route.list">).routes; // the reply of that method
  const read = await host.call("route.read", { routeId: first?.routeId });
  if (!read.ok) throw new Error(read.fault.what);
  const rows: unknown = (read.value as Reply<"route.read">).tables[table];
  return rows as readonly Row<T>[]; // the host gives a table's own rows
}
