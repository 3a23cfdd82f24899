import { resolve } from "node:path";
import { paperNames } from "../../../core/model/paperNames.ts";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import { sheetKinds } from "../../../core/sheets/book.ts";
import type { PaperName } from "../../../core/sheets/paper/paper.ts";
import { drawFiles } from "../../host/drawFiles.ts";
import type { Wanted } from "../../host/drawnState.ts";
import { type Drawn, drawPdf } from "../../host/drawPdf.ts";
import { drawWorksheets } from "../../host/drawWorksheets.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import type { Session } from "../../host/session.ts";
import { type Desk, readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "draw",
  usage:
    "FILE.strand [--revision LETTER | --as-built] [--sheets KIND,NUMBER,...] [--paper SIZE] [--out FILE.pdf | --svg FOLDER | --dxf FOLDER | --png FOLDER] [--worksheet FIGURE ...]",
};
const kinds = sheetKinds.filter((one) => one !== "worksheet");

/** Draws the construction set, or worksheets of figures, to one PDF, or its sheets to a file each. */
export const drawVerb: Verb = {
  ...shape,
  help: "Draws the construction set to one PDF, beside the route file unless told otherwise, or each sheet to a file of its own with --svg, --dxf or --png, which is painted at 200 dots per inch. --sheets takes some of them, by kind or number; --revision that revision as it was issued; --as-built the route with what was read in place of what was designed, the design struck through beside it; --paper is ANSI A to D or A4 to A1. With --worksheet it draws figures worked out instead: clearance:crossing-3:iced, or findings for those that findings compare.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], {
      out: { type: "string" },
      svg: { type: "string" },
      dxf: { type: "string" },
      png: { type: "string" },
      sheets: { type: "string" },
      revision: { type: "string" },
      "as-built": { type: "boolean" },
      paper: { type: "string" },
      worksheet: { type: "string", multiple: true },
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const only = sheetsAsked(values.sheets);
    if (!only.ok) return only;
    const paper = paperAsked(values.paper);
    if (!paper.ok) return paper;
    const places = [values.out, values.svg, values.dxf, values.png].filter((one) => one !== undefined);
    if (places.length > 1 || (values.worksheet && places.length > 0 && values.out === undefined)) {
      const mend = `Write: strandwright draw ${shape.usage}`;
      return fail("bad-arguments", "A drawing goes to one place, worksheets to a PDF.", shape.name, mend);
    }
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const wanted = {
        only: only.value,
        letter: values.revision ?? null,
        paper: paper.value,
        isAsBuilt: values["as-built"] ?? false,
      };
      const drawn = await draw(session, desk, wanted, values);
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

type Places = {
  readonly out?: string;
  readonly svg?: string;
  readonly dxf?: string;
  readonly png?: string;
  readonly worksheet?: string[];
};

function draw(session: Session, desk: Desk, wanted: Wanted, places: Places): Promise<Result<Drawn>> {
  const { out, svg, dxf, png, worksheet } = places;
  const path = out === undefined ? null : resolve(out);
  if (worksheet) return drawWorksheets(session, worksheet, path);
  if (svg !== undefined) return drawFiles(session, desk.runJob, "svg", svg, wanted);
  if (dxf !== undefined) return drawFiles(session, desk.runJob, "dxf", dxf, wanted);
  if (png !== undefined) return drawFiles(session, desk.runJob, "png", png, wanted);
  return drawPdf(session, desk.runJob, wanted, path);
}

/** Kinds and numbers of sheets, with commas between them; null where all are wanted. */
function sheetsAsked(text: string | undefined): Result<readonly string[] | null> {
  if (text === undefined) return ok(null);
  const asked = text.split(",").map((one) => one.trim().toLowerCase());
  const odd = asked.find((one) => !/^\d+$/.test(one) && !kinds.some((kind) => kind === one));
  if (odd === undefined) return ok(asked);
  const mend = `Use numbers of sheets, or ${kinds.join(", ")}, with commas between them.`;
  return fail("bad-arguments", `"${odd}" is neither a kind nor a number of a sheet.`, "--sheets", mend);
}

/** A paper by its name, however spaced: "ANSI D", ansi-d, a1; null where none was asked for. */
function paperAsked(text: string | undefined): Result<PaperName | null> {
  if (text === undefined) return ok(null);
  const bare = (name: string) => name.toLowerCase().replace(/[\s-]/g, "");
  const paper = paperNames.find((one) => bare(one) === bare(text));
  if (paper) return ok(paper);
  return fail("bad-arguments", `That is no paper: ${text}.`, "--paper", `Name one of ${paperNames.join(", ")}.`);
}
