import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fail, ok, type Result } from "../../core/model/result.ts";
import { onDisk } from "../../db/sqliteFault.ts";

/** Folder below the home folder that copies of dropped files go to. */
const copiesFolder = "Strandwright";
const mostOfOneName = 1000;

/**
 * Where a route file a browser let fall is opened. A browser hands over its bytes and not its place: where a file known here has
 * that name and those bytes it is the one that was dropped, else the bytes are written to a new file.
 *
 * Faults: exists where a thousand copies of that name are there; read-only, disk-full and disk-error.
 *
 * @param known  paths of the route files this person had open
 * @param home   folder the folder of copies is made in
 */
export function placeDropped(
  fileName: string,
  bytes: Uint8Array,
  known: readonly string[],
  home: string,
): Result<{ path: string; isCopy: boolean }> {
  const same = known.find((path) => basename(path) === fileName && holds(path, bytes));
  if (same !== undefined) return ok({ path: same, isCopy: false });
  const folder = join(home, copiesFolder);
  return onDisk(folder, () => {
    mkdirSync(folder, { recursive: true });
    for (let count = 1; count <= mostOfOneName; count += 1) {
      const path = join(folder, count === 1 ? fileName : fileName.replace(/\.strand$/i, ` ${count}.strand`));
      if (writeNew(path, bytes)) return ok({ path, isCopy: true });
    }
    return fail("exists", "Too many copies of that name are there.", join(folder, fileName), "Remove some of them.");
  });
}

function holds(path: string, bytes: Uint8Array): boolean {
  try {
    return readFileSync(path).equals(bytes);
  } catch {
    return false;
  }
}

/** False where a file of that name is there; it is never written over. */
function writeNew(path: string, bytes: Uint8Array): boolean {
  try {
    writeFileSync(path, bytes, { flag: "wx" });
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  }
}
