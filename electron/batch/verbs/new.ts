import { ok, type Result } from "../../../core/model/result.ts";
import { createFromTemplate, createRoute, type FirstSettings } from "../../host/openRoute.ts";
import type { Session } from "../../host/session.ts";
import { readTemplateFile } from "../../host/templates.ts";
import { type Desk, readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "new",
  usage:
    "FILE.strand [--name TEXT] [--place TEXT] [--units us|metric] [--clearance-set ID] [--district ID] [--template FILE.json]",
};

/** Makes an empty route file with the catalogues and the company's default settings. */
export const newVerb: Verb = {
  ...shape,
  help: "Makes a route file with the catalogues and default settings, or with the standards, catalogues and logo of a template; see standards.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      name: text,
      place: text,
      units: text,
      "clearance-set": text,
      district: text,
      template: text,
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const wanted = {
      routeName: values.name ?? "New route",
      place: values.place,
      unitSystem: values.units,
      clearanceSetId: values["clearance-set"],
      loadingDistrictId: values.district,
    };
    const path = positionals[0] ?? "";
    const made = await make(path, desk, wanted, values.template);
    if (!made.ok) return made;
    made.value.close();
    return ok({ exitCode: 0, lines: [`Made ${made.value.path}`], json: { path: made.value.path } });
  },
};

async function make(
  path: string,
  desk: Desk,
  wanted: FirstSettings,
  template: string | undefined,
): Promise<Result<Session>> {
  if (template === undefined) return createRoute(path, desk.assetsFolder, wanted, desk.stamp);
  const file = readTemplateFile(template);
  return file.ok ? createFromTemplate(path, desk.assetsFolder, wanted, file.value, desk.stamp) : file;
}
