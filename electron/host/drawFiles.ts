import { fail, ok, type Result } from "../../core/model/result.ts";
import { type Wanted, wantedState } from "./drawnState.ts";
import type { Drawn } from "./drawPdf.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";
import type { SheetFormat } from "./sheetFiles.ts";
import { writeFolder } from "./writeFolder.ts";

/** Draws sheets of a route's construction set, a file each, into a folder that is made where it is missing. */
export async function drawFiles(
  session: Session,
  runJob: RunJob,
  format: SheetFormat,
  folder: string,
  wanted: Wanted,
): Promise<Result<Drawn>> {
  const takes = wantedState(session, wanted);
  if (!takes.ok) return takes;
  const files = await runJob("files", { ...takes.value, format }, () => {}, new AbortController().signal);
  if (files.length === 0) return noSheets(wanted);
  const written = writeFolder(folder, files);
  return written.ok ? ok({ ...written.value, sheetCount: files.length }) : written;
}

/** The set has none of the sheets wanted. */
export function noSheets({ only }: Wanted): Result<never> {
  const mend = "Draw the whole set first; its cover lists the sheets.";
  return fail("no-sheets", "The set has none of these sheets.", only?.join(",") ?? "the set", mend);
}
