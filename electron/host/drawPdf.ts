import { ok, type Result } from "../../core/model/result.ts";
import { noSheets } from "./drawFiles.ts";
import { type Wanted, wantedState } from "./drawnState.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";
import { writeOut } from "./writeOut.ts";

export type Drawn = { readonly path: string; readonly sheetCount: number; readonly byteCount: number };

/**
 * Draws a route's construction set to a PDF file.
 *
 * @param out  where to; null puts it beside the route file under the same name
 */
export async function drawPdf(
  session: Session,
  runJob: RunJob,
  wanted: Wanted,
  out: string | null,
): Promise<Result<Drawn>> {
  const beside = `${session.path.replace(/\.strand$/, "")}.pdf`;
  const takes = wantedState(session, wanted);
  if (!takes.ok) return takes;
  const { pdf, sheetCount } = await runJob("pdf", takes.value, () => {}, new AbortController().signal);
  if (sheetCount === 0) return noSheets(wanted);
  const written = writeOut(out ?? beside, pdf);
  return written.ok ? ok({ ...written.value, sheetCount }) : written;
}
