import { ok, type Result } from "../../core/model/result.ts";
import type { PaperName } from "../../core/sheets/paper.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";
import { writeOut } from "./writeOut.ts";

export type Drawn = { readonly path: string; readonly sheetCount: number; readonly byteCount: number };

/**
 * Draws a route's construction set to a PDF file.
 *
 * @param paper  what on; null takes the usual paper of the route's units
 * @param out  where to; null puts it beside the route file under the same name
 */
export async function drawPdf(
  session: Session,
  runJob: RunJob,
  paper: PaperName | null,
  out: string | null,
): Promise<Result<Drawn>> {
  const beside = `${session.path.replace(/\.strand$/, "")}.pdf`;
  const takes = { route: session.route(), findings: session.findings(), paper, only: null };
  const { pdf, sheetCount } = await runJob("pdf", takes, () => {}, new AbortController().signal);
  const written = writeOut(out ?? beside, pdf);
  return written.ok ? ok({ ...written.value, sheetCount }) : written;
}
