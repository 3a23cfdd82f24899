import { mkdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { fail, ok, type Result } from "../../core/model/result.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { type Wanted, wantedState } from "./drawnState.ts";
import type { Drawn } from "./drawPdf.ts";
import type { RunJob, SheetFormat } from "./jobs.ts";
import type { Session } from "./session.ts";
import { writeOut } from "./writeOut.ts";

/** Draws sheets of a route's construction set, a file each, into a folder that is made where it is missing. */
export async function drawFiles(
  session: Session,
  runJob: RunJob,
  format: SheetFormat,
  folder: string,
  wanted: Wanted,
): Promise<Result<Drawn>> {
  const path = resolve(folder);
  const takes = wantedState(session, wanted);
  if (!takes.ok) return takes;
  const files = await runJob("files", { ...takes.value, format }, () => {}, new AbortController().signal);
  if (files.length === 0) return noSheets(wanted);
  const made = onDisk(path, () => ok(mkdirSync(path, { recursive: true })));
  if (!made.ok) return made;
  let byteCount = 0;
  for (const { name, text } of files) {
    const written = writeOut(join(path, name), text);
    if (!written.ok) return written;
    byteCount += written.value.byteCount;
  }
  return ok({ path, sheetCount: files.length, byteCount });
}

/** The set has none of the sheets wanted. */
export function noSheets({ only }: Wanted): Result<never> {
  const mend = "Draw the whole set first; its cover lists the sheets.";
  return fail("no-sheets", "The set has none of these sheets.", only?.join(",") ?? "the set", mend);
}
