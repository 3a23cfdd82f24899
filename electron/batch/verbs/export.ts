import { exportFormats } from "../../../core/contract/exportMethods.ts";
import { type CsvList, csvLists, writeCsv } from "../../../core/exchange/writeCsv.ts";
import { writeScheduleCsv } from "../../../core/exchange/writeScheduleCsv.ts";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import { exportFile } from "../../host/exportFile.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { routeSchedules } from "../../host/routeSchedules.ts";
import type { Session } from "../../host/session.ts";
import { writeFolder } from "../../host/writeFolder.ts";
import { writeOut } from "../../host/writeOut.ts";
import { type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "export",
  usage: `FILE.strand (--geojson OUT | --kml OUT | --dxf OUT | --xlsx OUT | --schedules FOLDER | --csv OUT --list ${csvLists.join("|")})`,
};

/** Writes the route for another program: as GeoJSON, KML or DXF, its schedules as a workbook or CSV, or one of its lists as CSV. */
export const exportVerb: Verb = {
  ...shape,
  help: "Writes the route as GeoJSON, as KML, as a DXF drawing in plan at its true size, its schedules as an XLSX workbook or as a CSV each, or one of its lists as CSV.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      geojson: text,
      kml: text,
      dxf: text,
      xlsx: text,
      schedules: text,
      csv: text,
      list: text,
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const asked = formats.filter((one) => values[one] !== undefined);
    const [format] = asked;
    const out = format && values[format];
    if (!format || !out || asked.length > 1) {
      const what = out ? "One export goes to one place." : "The export has no place to go.";
      return fail("bad-arguments", what, shape.name, `Write: strandwright export ${shape.usage}`);
    }
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      if (format === "schedules") return saveSchedules(session, out);
      const written = format === "csv" ? csvText(session, values.list ?? "") : await exportFile(session, format);
      return written.ok ? save(out, written.value) : written;
    });
  },
};

const formats = [...exportFormats, "csv", "schedules"] as const;

function csvText(session: Session, name: string): Result<string> {
  const list = csvLists.find((one): one is CsvList => one === name);
  if (!list)
    return fail("unknown-list", `There is no list called "${name}".`, "--list", `Use one of ${csvLists.join(", ")}.`);
  return ok(writeCsv(session.route(), list));
}

function save(out: string, text: string | Uint8Array): Result<Outcome> {
  const written = writeOut(out, text);
  return written.ok ? ok({ exitCode: 0, lines: [`Wrote ${written.value.path}`], json: written.value }) : written;
}

/** Writes a CSV for each schedule into a folder that is made where it is missing. */
function saveSchedules(session: Session, folder: string): Result<Outcome> {
  const files = routeSchedules(session).map((one) => ({
    name: `${one.name.toLowerCase().replaceAll(" ", "-")}.csv`,
    content: writeScheduleCsv(one),
  }));
  const written = writeFolder(folder, files);
  if (!written.ok) return written;
  const { path } = written.value;
  return ok({ exitCode: 0, lines: [`Wrote ${files.length} schedules to ${path}`], json: written.value });
}
