import { ok, type Result } from "../../core/model/result.ts";
import { noSheets } from "./drawFiles.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";
import { writeOut } from "./writeOut.ts";

export type Drawn = { readonly path: string; readonly sheetCount: number; readonly byteCount: number };

/**
 * Draws a route's construction set to a PDF file.
 *
 * @param only  kinds or numbers of the sheets wanted; null draws all
 * @param out  where to; null puts it beside the route file under the same name
 */
export async function drawPdf(
  session: Session,
  runJob: RunJob,
  only: readonly string[] | null,
  out: string | null,
): Promise<Result<Drawn>> {
  const beside = `${session.path.replace(/\.strand$/, "")}.pdf`;
  const takes = { route: session.route(), findings: session.findings(), only };
  const { pdf, sheetCount } = await runJob("pdf", takes, () => {}, new AbortController().signal);
  if (sheetCount === 0) return noSheets(only);
  const written = writeOut(out ?? beside, pdf);
  return written.ok ? ok({ ...written.value, sheetCount }) : written;
}
