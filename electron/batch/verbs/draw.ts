import { resolve } from "node:path";
import { ok } from "../../../core/model/result.ts";
import { drawPdf } from "../../host/drawPdf.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "draw", usage: "FILE.strand [--out FILE.pdf]" };

/** Draws the construction set to one PDF. */
export const drawVerb: Verb = {
  ...shape,
  help: "Draws the construction set to one PDF, beside the route file unless told otherwise.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], { out: { type: "string" } });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const drawn = await drawPdf(session, desk.runJob, values.out === undefined ? null : resolve(values.out));
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
