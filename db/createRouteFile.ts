import { existsSync, renameSync, rmSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { changeThatFills } from "../core/edits/change.ts";
import { fail, ok, type Result, refused } from "../core/model/result.ts";
import { type Route, settingsId } from "../core/model/route.ts";
import { climb } from "./climb.ts";
import type { WriteDb } from "./driver.ts";
import { applicationId } from "./header.ts";
import { type Opening, openRouteFile, openRouteHandle, type RouteFile } from "./openRouteFile.ts";
import { onDisk } from "./sqliteFault.ts";
import { transact } from "./transact.ts";
import { writeRows } from "./writeRows.ts";

/**
 * Makes a route file that holds a route, and opens it. Its journal starts empty: what it was made with cannot be undone.
 *
 * The file appears under its name only when it is whole. Faults: exists, no-folder, bad-row, broken-reference, and those of opening.
 */
export function createRouteFile(path: string, route: Route, opening: Opening): Result<RouteFile> {
  const full = resolve(path);
  if (existsSync(full)) return fail("exists", "There is already a file of this name.", full, "Choose another name.");
  if (!existsSync(dirname(full)))
    return fail("no-folder", "There is no such folder.", dirname(full), "Make the folder first, or check the path.");
  if (!route.settings.has(settingsId)) {
    return fail("bad-row", "A route needs its settings row.", "settings", "Add the settings and try again.");
  }
  const unfinished = `${full}.new-${process.pid}`;
  const made = onDisk(full, () => {
    const filled = fill(unfinished, route, opening);
    if (filled.ok) renameSync(unfinished, full);
    return filled;
  });
  if (made.ok) return openRouteFile(full, opening);
  for (const rest of [unfinished, `${unfinished}-journal`]) rmSync(rest, { force: true });
  return made.fault.where === unfinished ? refused({ ...made.fault, where: full }) : made;
}

function fill(path: string, route: Route, opening: Opening): Result<null> {
  const handle = openRouteHandle(path, false, opening);
  if (!handle.ok) return handle;
  try {
    return fillDb(handle.value.db, route, opening.atIso);
  } finally {
    handle.value.close();
  }
}

function fillDb(db: WriteDb, route: Route, atIso: string): Result<null> {
  db.exec(`PRAGMA application_id = ${applicationId}`);
  const climbed = climb(db, null, 0, atIso);
  if (!climbed.ok) return climbed;
  return transact(db, () => {
    const wrong = writeRows(db, changeThatFills(route));
    return wrong ? { ok: false, fault: wrong } : ok(null);
  });
}
