import { mkdirSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { ok, type Result } from "../../core/model/result.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { writeOut } from "./writeOut.ts";

/** Writes files into a folder that is made where it is missing; a name with / goes into a folder below it. Faults: is-a-file, and those of writeOut. */
export function writeFolder(
  folder: string,
  files: readonly { readonly name: string; readonly content: string | Uint8Array }[],
): Result<{ path: string; byteCount: number }> {
  const path = resolve(folder);
  const made = onDisk(path, () => ok(mkdirSync(path, { recursive: true })));
  if (!made.ok) return made;
  let byteCount = 0;
  for (const { name, content } of files) {
    const place = join(path, name);
    const below = onDisk(place, () => ok(mkdirSync(dirname(place), { recursive: true })));
    if (!below.ok) return below;
    const written = writeOut(place, content);
    if (!written.ok) return written;
    byteCount += written.value.byteCount;
  }
  return ok({ path, byteCount });
}
