import { writeSync } from "node:fs";
import { openHost } from "../../electron/host/host.ts";
import { openRoute } from "../../electron/host/openRoute.ts";
import { openLoopback } from "../../electron/loopback/server.ts";

/** Opens a route file on the loopback door, as a start of the program does, and tells the address; runs until it is killed. */
const [path = "", windowFolder = ""] = process.argv.slice(2);

const noJobs = (): Promise<never> => Promise.reject(new Error("this program does edits only"));
const opened = openRoute(path, { author: "Field", nowIso: () => new Date().toISOString() });
if (!opened.ok) throw new Error(`${opened.fault.code}: ${opened.fault.what}`);
const host = openHost({ runJob: noJobs, report: (error) => console.error(error) });
host.add(opened.value);
writeSync(1, `${(await openLoopback(host, windowFolder)).url}\n`);
