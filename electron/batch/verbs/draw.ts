import { resolve } from "node:path";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import { type PaperName, paperNames } from "../../../core/sheets/paper.ts";
import { drawPdf } from "../../host/drawPdf.ts";
import { drawWorksheets } from "../../host/drawWorksheets.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "draw", usage: "FILE.strand [--paper SIZE] [--out FILE.pdf] [--worksheet FIGURE ...]" };

/** Draws the construction set, or worksheets of figures, to one PDF. */
export const drawVerb: Verb = {
  ...shape,
  help: "Draws the construction set to one PDF, beside the route file unless told otherwise, on ANSI A to D or A4 to A1. With --worksheet it draws figures worked out instead: clearance:crossing-3:iced, or findings for those that findings compare.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], {
      out: { type: "string" },
      paper: { type: "string" },
      worksheet: { type: "string", multiple: true },
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const paper = paperAsked(values.paper);
    if (!paper.ok) return paper;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const out = values.out === undefined ? null : resolve(values.out);
      const drawn = await (values.worksheet
        ? drawWorksheets(session, values.worksheet, out)
        : drawPdf(session, desk.runJob, paper.value, out));
      if (!drawn.ok) return drawn;
      const { path, sheetCount, byteCount } = drawn.value;
      return ok({
        exitCode: 0,
        lines: [`Drew ${sheetCount} sheets to ${path} (${byteCount} bytes)`],
        json: drawn.value,
      });
    });
  },
};

/** A paper by its name, however spaced: "ANSI D", ansi-d, a1; null where none was asked for. */
function paperAsked(text: string | undefined): Result<PaperName | null> {
  if (text === undefined) return ok(null);
  const bare = (name: string) => name.toLowerCase().replace(/[\s-]/g, "");
  const paper = paperNames.find((one) => bare(one) === bare(text));
  if (paper) return ok(paper);
  return fail("bad-arguments", `That is no paper: ${text}.`, "--paper", `Name one of ${paperNames.join(", ")}.`);
}
