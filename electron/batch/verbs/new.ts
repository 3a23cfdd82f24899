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
    const path = positionals[0] ?? "";
    const made = createRoute(path, desk.assetsFolder, { routeName: values.name ?? "New route" }, desk.stamp);
    if (!made.ok) return made;
    const session = made.value;
    try {
      const wanted = {
        ...(values.place === undefined ? {} : { place: values.place }),
        ...(values.units === undefined ? {} : { unitSystem: values.units }),
        ...(values["clearance-set"] === undefined ? {} : { clearanceSetId: values["clearance-set"] }),
        ...(values.district === undefined ? {} : { loadingDistrictId: values.district }),
      };
      if (Object.keys(wanted).length > 0) {
        const set = session.run("settings.set", { values: wanted });
        if (!set.ok) return set;
      }
      return ok({ exitCode: 0, lines: [`Made ${session.path}`], json: { path: session.path } });
    } finally {
      session.close();
    }
  },
};
