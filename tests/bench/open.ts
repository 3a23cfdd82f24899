import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import type { Route } from "../../core/model/route.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { loadRoute } from "../../db/loadRoute.ts";
import { openRouteFile } from "../../db/openRouteFile.ts";
import { type Figures, medianMs } from "./measure.ts";

const stamp = { author: "bench", atIso: "2026-01-01T00:00:00.000Z" };

/** Opening a route file, integrity check and row checks included, against bare SELECTs of the same rows. */
export async function benchOpen(route: Route): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), "strand-bench-"));
  const path = join(folder, "long.strand");
  try {
    const made = createRouteFile(path, route, stamp);
    if (!made.ok) throw new Error(made.fault.what);
    made.value.close();
    const openMs = await medianMs(
      3,
      () => null,
      () => open(path),
    );
    const selectMs = await medianMs(
      3,
      () => null,
      () => selectAll(path),
    );
    return { openRouteMs: openMs, openOverBareSelect: openMs / selectMs };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function open(path: string): void {
  const file = openRouteFile(path, stamp);
  if (!file.ok) throw new Error(file.fault.what);
  const loaded = loadRoute(file.value.db);
  file.value.close();
  if (!loaded.ok) throw new Error(loaded.fault.what);
}

function selectAll(path: string): void {
  const db = new Database(path, { readonly: true });
  const names = db.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").pluck().all();
  for (const name of names) db.prepare(`SELECT * FROM "${name}"`).all();
  db.close();
}
