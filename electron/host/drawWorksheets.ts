import { figureOfFinding } from "../../core/explain/figureOfFinding.ts";
import { figureOfText } from "../../core/explain/figureText.ts";
import { fail, ok, type Result } from "../../core/model/result.ts";
import { composeWorksheets } from "../../core/sheets/worksheets.ts";
import { keptLogo } from "./companyLogo.ts";
import type { Drawn } from "./drawPdf.ts";
import type { Session } from "./session.ts";
import { writeOut } from "./writeOut.ts";
import { writePdf } from "./writePdf.ts";

/**
 * Draws worksheets of figures to a PDF file.
 *
 * Faults: bad-figure where a text names no figure; no-figure where no row of the route has one.
 *
 * @param wanted  figures as `clearance:crossing-3:iced`; `findings` stands for those that open findings compare
 * @param out     where to; null puts it beside the route file under its name
 */
export async function drawWorksheets(
  session: Session,
  wanted: readonly string[],
  out: string | null,
): Promise<Result<Drawn>> {
  const bad = wanted.find((one) => one !== "findings" && figureOfText(one) === null);
  if (bad !== undefined) {
    const mend = "Write FIGURE:ROW, or FIGURE:ROW:CASE such as clearance:crossing-3:iced, or findings.";
    return fail("bad-figure", `"${bad}" names no figure that can be worked out.`, bad, mend);
  }
  const ofFindings = () =>
    session
      .findings()
      .filter((one) => one.waiverId === null)
      .flatMap((one) => figureOfFinding(session.plant, one) ?? []);
  const figures = wanted.flatMap((one) => (one === "findings" ? ofFindings() : (figureOfText(one) ?? [])));
  const set = composeWorksheets(session.plant, figures, keptLogo(session.file.db, session.route()));
  if (set.sheets.length === 0) {
    const mend = "The check with --json tells the rows that findings are about.";
    return fail("no-figure", "The route has no such figure to work out.", wanted.join(" "), mend);
  }
  const beside = `${session.path.replace(/\.strand$/, "")}-worksheets.pdf`;
  const written = writeOut(out ?? beside, await writePdf(set));
  return written.ok ? ok({ ...written.value, sheetCount: set.sheets.length }) : written;
}
