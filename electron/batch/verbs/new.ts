import { ok } from "../../../core/model/result.ts";
import { createRoute } from "../../host/openRoute.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "new",
  usage: "FILE.strand [--name TEXT] [--place TEXT] [--units us|metric] [--clearance-set ID] [--district ID]",
};

/** Makes an empty route file with the catalogues and the company's default settings. */
export const newVerb: Verb = {
  ...shape,
  help: "Makes a route file with the catalogues and default settings.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      name: text,
      place: text,
      units: text,
      "clearance-set": text,
      district: text,
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
    const made = createRoute(positionals[0] ?? "", desk.assetsFolder, wanted, desk.stamp);
    if (!made.ok) return made;
    made.value.close();
    const { path } = made.value;
    return ok({ exitCode: 0, lines: [`Made ${path}`], json: { path } });
  },
};
