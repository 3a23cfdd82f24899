import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { Method, Reply, Request } from "../../core/contract/contract.ts";
import { plainWays } from "../../core/contract/wayMethods.ts";
import { type Host, openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { createRoute, openOrLook } from "../../electron/host/openRoute.ts";
import { openRecentRoutes } from "../../electron/host/recentRoutes.ts";
import type { Session } from "../../electron/host/session.ts";

const assetsFolder = join(import.meta.dirname, "../../assets");
const stamp = { author: "Jo", nowIso: () => "2026-03-02T08:00:00.000Z" };

let home: string;
let host: Host;

function start(): Host {
  const configFolder = join(home, "config");
  const files = { configFolder, roots: [home], assetsFolder, demoPath: join(home, "demo.strand"), stamp };
  return openHost({ runJob: runJobHere, report: () => {}, files });
}

function newRoute(name: string): Session {
  const made = createRoute(join(home, `${name}.strand`), assetsFolder, { routeName: name }, stamp);
  if (!made.ok) throw new Error(made.fault.what);
  return made.value;
}

async function call<M extends Method>(method: M, request: Request<M>): Promise<Reply<M>> {
  const reply = await host.call(method, request);
  if (!reply.ok) throw new Error(`${method}: ${reply.fault.what}`);
  return reply.value as Reply<M>; // the reply of that method
}

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), "strandwright-ways-"));
  host = start();
});
afterEach(() => {
  host.close();
  rmSync(home, { recursive: true });
});

test("how a file was looked at is known again after the program was closed, and each file has its own ways", async () => {
  const elm = host.add(newRoute("Elm"));
  const oak = host.add(newRoute("Oak"));
  const keep = { ...plainWays, drawnAs: "scale", views: { scale: { leftEastM: 1, topNorthM: 2, pxPerM: 3 } } } as const;
  await call("route.ways", { routeId: elm, keep });
  expect(await call("route.ways", { routeId: oak })).toEqual({ ways: plainWays });
  host.close();
  host = start();
  const opened = openOrLook(join(home, "Elm.strand"), stamp);
  if (!opened.ok) throw new Error(opened.fault.what);
  expect(await call("route.ways", { routeId: host.add(opened.value) })).toEqual({ ways: keep });
});

test("the route opened last is the first of the recent ones that is still there", () => {
  host.add(newRoute("Elm"));
  host.add(newRoute("Oak"));
  host.close();
  rmSync(join(home, "Oak.strand"));
  expect(openRecentRoutes(join(home, "config")).paths()).toEqual([join(home, "Elm.strand")]);
});

test("a dropped file that is known here opens where it lies; another of its name is taken in as a copy, beside those of that name", async () => {
  host.add(newRoute("Elm"));
  host.close();
  const known = readFileSync(join(home, "Elm.strand"));
  const other = newRoute("Stranger");
  other.close();
  const strange = readFileSync(join(home, "Stranger.strand"));
  host = start();
  const drop = (bytes: Buffer) =>
    call("files.openDropped", { fileName: "Elm.strand", contentBase64: bytes.toString("base64") });
  expect((await drop(known)).copyFolder).toBe(null);
  expect((await drop(strange)).copyFolder).toBe(join(home, "Strandwright"));
  expect((await drop(Buffer.concat([strange, Buffer.alloc(0)]))).copyFolder).toBe(null);
  const { routes } = await call("route.list", {});
  expect(routes.map((one) => one.routeName)).toEqual(["Elm", "Stranger"]);
});

test("dropped bytes that are no route are refused and not kept", async () => {
  const contentBase64 = Buffer.from("tag,lat,lon\n").toString("base64");
  const reply = await host.call("files.openDropped", { fileName: "list.strand", contentBase64 });
  expect(reply).toMatchObject({ ok: false });
  const path = join(home, "Strandwright", "list.strand");
  expect(() => writeFileSync(path, "", { flag: "wx" })).not.toThrow();
});
