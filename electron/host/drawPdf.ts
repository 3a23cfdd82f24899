import { ok, type Result } from "../../core/model/result.ts";
import type { PaperName } from "../../core/sheets/paper.ts";
import { noSheets } from "./drawFiles.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";
import { writeOut } from "./writeOut.ts";

export type Drawn = { readonly path: string; readonly sheetCount: number; readonly byteCount: number };

/** Which sheets, on which paper. */
export type Wanted = {
  /** Kinds or numbers of the sheets; null takes all. */
  readonly only: readonly string[] | null;
  /** Null takes the usual paper of the route's units. */
  readonly paper: PaperName | null;
};

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
  const takes = { route: session.route(), findings: session.findings(), ...wanted };
  const { pdf, sheetCount } = await runJob("pdf", takes, () => {}, new AbortController().signal);
  if (sheetCount === 0) return noSheets(wanted.only);
  const written = writeOut(out ?? beside, pdf);
  return written.ok ? ok({ ...written.value, sheetCount }) : written;
}
