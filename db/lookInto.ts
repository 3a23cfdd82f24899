import { resolve } from "node:path";
import { fail, ok, type Result } from "../core/model/result.ts";
import { saveCopyAs } from "./backup.ts";
import type { WriteDb } from "./driver.ts";
import { newestVersion, readVersion } from "./header.ts";
import { checkTables } from "./integrity.ts";
import { type Opening, openRouteHandle, type RouteFile } from "./openRouteFile.ts";
import { onDisk } from "./sqliteFault.ts";

/**
 * Opens a route file for looking only: nobody is kept out, and every statement that would write is refused by SQLite.
 *
 * Faults: no-file, not-a-route, newer-file, older-file (only opening it for work brings it up to date), damaged, bad-binding.
 */
export function lookInto(path: string, opening: Opening): Result<RouteFile> {
  const full = resolve(path);
  const version = readVersion(full);
  if (!version.ok) return version;
  if (version.value < newestVersion) {
    const what = "The file is of an older version, and nobody may bring it up to date while it is kept from us.";
    return fail("older-file", what, full, "Open it again when the other program has closed it.");
  }
  const handle = openRouteHandle(full, true, opening);
  if (!handle.ok) return handle;
  const { db, close } = handle.value;
  const ready = onDisk(full, () => {
    db.exec("PRAGMA query_only = ON");
    return checkTables(db, full);
  });
  if (ready.ok) return ok({ path: full, db, close });
  close();
  return ready;
}

/** Saves a copy of a file that is looked at only; SQLite takes even a copy for writing, so it is let through for that long. */
export function saveCopyLookedInto(db: WriteDb, target: string): Result<string> {
  db.exec("PRAGMA query_only = OFF");
  try {
    return saveCopyAs(db, target);
  } finally {
    db.exec("PRAGMA query_only = ON");
  }
}
