import { writeRouteDxf } from "../../../core/dxf/writeRouteDxf.ts";
import { type CsvList, csvLists, writeCsv } from "../../../core/exchange/writeCsv.ts";
import { writeGeojson } from "../../../core/exchange/writeGeojson.ts";
import { writeKml } from "../../../core/exchange/writeKml.ts";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import type { Session } from "../../host/session.ts";
import { writeOut } from "../../host/writeOut.ts";
import { type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "export",
  usage: `FILE.strand (--geojson OUT | --kml OUT | --dxf OUT | --csv OUT --list ${csvLists.join("|")})`,
};

/** Writes the route for another program: as GeoJSON, KML or DXF, or one of its lists as CSV. */
export const exportVerb: Verb = {
  ...shape,
  help: "Writes the route as GeoJSON, as KML, as a DXF drawing in plan at its true size, or one of its lists as CSV.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], { geojson: text, kml: text, dxf: text, csv: text, list: text });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const asked = formats.filter((one) => values[one] !== undefined);
    const [format] = asked;
    const out = format && values[format];
    if (!format || !out || asked.length > 1) {
      const what = out ? "One export goes to one place." : "The export has no place to go.";
      return fail("bad-arguments", what, shape.name, `Write: strandwright export ${shape.usage}`);
    }
    return withRouteFile(positionals[0] ?? "", desk.stamp, (session) => {
      const written = contentOf(session, format, values.list ?? "");
      return written.ok ? save(out, written.value) : written;
    });
  },
};

const formats = ["geojson", "kml", "dxf", "csv"] as const;

function contentOf(session: Session, format: (typeof formats)[number], list: string): Result<string> {
  switch (format) {
    case "geojson":
      return writeGeojson(session.route());
    case "kml":
      return writeKml(session.route());
    case "dxf":
      return writeRouteDxf(session.route());
    case "csv":
      return csvText(session, list);
  }
}

function csvText(session: Session, name: string): Result<string> {
  const list = csvLists.find((one): one is CsvList => one === name);
  if (!list)
    return fail("unknown-list", `There is no list called "${name}".`, "--list", `Use one of ${csvLists.join(", ")}.`);
  return ok(writeCsv(session.route(), list));
}

function save(out: string, text: string): Result<Outcome> {
  const written = writeOut(out, text);
  return written.ok ? ok({ exitCode: 0, lines: [`Wrote ${written.value.path}`], json: written.value }) : written;
}
