import { writeFileSync } from "node:fs";
import { fail, ok, type Result } from "../../core/model/result.ts";
import type { RunJob } from "./jobs.ts";
import type { Session } from "./session.ts";

export type Drawn = { readonly path: string; readonly sheetCount: number; readonly byteCount: number };

/**
 * Draws a route's construction set to a PDF file.
 *
 * @param out  where to; null puts it beside the route file under the same name
 */
export async function drawPdf(session: Session, runJob: RunJob, out: string | null): Promise<Result<Drawn>> {
  const path = out ?? `${session.path.replace(/\.strand$/, "")}.pdf`;
  const takes = { route: session.route(), findings: session.findings() };
  const { pdf, sheetCount } = await runJob("pdf", takes, () => {}, new AbortController().signal);
  try {
    writeFileSync(path, pdf);
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    return fail(
      "cannot-write",
      `The drawing set cannot be written: ${words}.`,
      path,
      "Choose another place with --out.",
    );
  }
  return ok({ path, sheetCount, byteCount: pdf.byteLength });
}
