import { resolve } from "node:path";
import { ok } from "../../../core/model/result.ts";
import { drawPdf } from "../../host/drawPdf.ts";
import { drawWorksheets } from "../../host/drawWorksheets.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "draw", usage: "FILE.strand [--out FILE.pdf] [--worksheet FIGURE ...]" };

/** Draws the construction set, or worksheets of figures, to one PDF. */
export const drawVerb: Verb = {
  ...shape,
  help: "Draws the construction set to one PDF, beside the route file unless told otherwise. With --worksheet it draws figures worked out instead: clearance:crossing-3:iced, or findings for those that findings compare.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], {
      out: { type: "string" },
      worksheet: { type: "string", multiple: true },
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const out = values.out === undefined ? null : resolve(values.out);
      const drawn = await (values.worksheet
        ? drawWorksheets(session, values.worksheet, out)
        : drawPdf(session, desk.runJob, out));
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
