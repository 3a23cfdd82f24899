import { fail, ok, type Result } from "../../core/model/result.ts";
import type { Drawn, Wanted } from "./drawPdf.ts";
import type { RunJob, SheetFormat } from "./jobs.ts";
import type { Session } from "./session.ts";
import { writeFolder } from "./writeFolder.ts";

/**
 * Draws sheets of a route's construction set, a file each, into a folder that is made where it is missing.
 */
export async function drawFiles(
  session: Session,
  runJob: RunJob,
  format: SheetFormat,
  folder: string,
  wanted: Wanted,
): Promise<Result<Drawn>> {
  const takes = { route: session.route(), findings: session.findings(), ...wanted, format };
  const files = await runJob("files", takes, () => {}, new AbortController().signal);
  if (files.length === 0) return noSheets(wanted.only);
  const written = writeFolder(folder, files);
  return written.ok ? ok({ ...written.value, sheetCount: files.length }) : written;
}

/** The set has none of the sheets wanted. */
export function noSheets(only: readonly string[] | null): Result<never> {
  const mend = "Draw the whole set first; its cover lists the sheets.";
  return fail("no-sheets", "The set has none of these sheets.", only?.join(",") ?? "the set", mend);
}
