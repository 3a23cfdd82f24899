import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Result } from "../../../core/model/result.ts";
import type { Route } from "../../../core/model/route.ts";
import { createRouteFile } from "../../../db/createRouteFile.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import type { RouteFile } from "../../../db/openRouteFile.ts";

export const opening = { author: "R. Field", atIso: "2026-03-04T05:06:07Z" };

/** A folder of its own for one test, gone afterwards; the work gets the path of a route file that is not there yet. */
export function inScratch<T>(work: (path: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), "route-"));
  try {
    return work(join(folder, "elm street.strand"), folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The value of a request a test needs granted. */
export function granted<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.fault.code}: ${result.fault.what} (${result.fault.where})`);
  return result.value;
}

/** The code of the fault a request met; "granted" where it met none. */
export function faultCode(result: Result<unknown>): string {
  return result.ok ? "granted" : result.fault.code;
}

/** A fresh route file, open for the length of the work. */
export function withFile<T>(route: Route, work: (file: RouteFile, folder: string) => T): T {
  return inScratch((path, folder) => {
    const file = granted(createRouteFile(path, route, opening));
    try {
      return work(file, folder);
    } finally {
      file.close();
    }
  });
}

/** What the file holds now. */
export function routeIn(file: RouteFile): Route {
  return granted(loadRoute(file.db));
}
