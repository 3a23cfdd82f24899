import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import type { Reply } from "../../core/contract/contract.ts";
import type { Row, TableName } from "../../core/model/tables.ts";
import { type Host, openHost } from "../../electron/host/host.ts";
import { jobsInThread } from "../../electron/host/thread.ts";
import { type Loopback, openLoopback } from "../../electron/loopback/server.ts";

const root = resolve(import.meta.dirname, "../..");

/** The program as a person starts it: a home folder to open and keep routes in, nothing open yet. */
export type Program = {
  readonly host: Host;
  readonly loopback: Loopback;
  /** The folder a person may look round in; routes go to its `jobs`. */
  readonly home: string;
  readonly close: () => Promise<void>;
};

/** Starts the program in a fresh home folder, with a demo route there where its file is given. */
export async function startProgram(demoFile: string | null): Promise<Program> {
  const folder = mkdtempSync(join(tmpdir(), "strandwright-home-"));
  const home = join(folder, "home");
  const demoPath = join(home, "marrow-bend.strand");
  mkdirSync(join(home, "jobs"), { recursive: true });
  if (demoFile !== null) copyFileSync(demoFile, demoPath);
  const files = {
    configFolder: join(folder, "config"),
    roots: [home],
    assetsFolder: join(root, "assets"),
    demoPath,
    stamp: { author: "Field", nowIso: () => new Date().toISOString() },
  };
  const runJob = jobsInThread(new URL("../../.build/app/worker.mjs", import.meta.url));
  const host = openHost({ runJob, report: (error) => console.error(error), files });
  const loopback = await openLoopback(host, join(root, ".build", "renderer"));
  return {
    host,
    loopback,
    home,
    async close() {
      await loopback.close();
      host.close();
      rmSync(folder, { recursive: true });
    },
  };
}

/** A page on the start screen. */
export async function openStart({ loopback }: Program, context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${loopback.url}&view-handle`);
  await page.locator("h1").waitFor();
  return page;
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
