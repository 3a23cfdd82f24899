import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { catalogueTables } from "../../core/model/catalogueRows.ts";
import { mark, words } from "../../core/model/fields.ts";
import { emptyRoute, type Route, settingsId } from "../../core/model/route.ts";
import { type LoadingDistrict, type SettingBasis, type Settings, tables } from "../../core/model/tables.ts";

const basis = z.strictObject({ document: words, clause: words, edition: words, mark });
const catalogueNames = Object.keys(catalogueTables);

/**
 * A route with the catalogues and the default settings, and nothing else.
 *
 * @param assetsFolder  the program's assets
 * @throws Error when an asset is missing or breaks its schema: the program is then damaged, not the user's data
 */
export function newRoute(assetsFolder: string, values: Pick<Settings, "routeName"> & Partial<Settings>): Route {
  const folder = join(assetsFolder, "catalogue");
  const catalogues = catalogueNames.map((name) => {
    const rows = z.array(tables[name as keyof typeof catalogueTables]).parse(readJson(join(folder, `${name}.json`))); // a key of that object
    return [name, new Map(rows.map((row) => [row.id, row]))] as const;
  });
  const defaults = tables.settings.parse(readJson(join(folder, "settings.json")));
  const settings = { ...defaults, ...values };
  const bases = Object.entries(z.record(z.string(), basis).parse(readJson(join(folder, "settings.basis.json"))));
  // units on screen are a habit, not a standard somebody read
  const settingBasis = new Map(
    bases
      .filter(([column]) => column !== "unitSystem" && Reflect.get(settings, column) === Reflect.get(defaults, column))
      .map(([id, { document, clause, edition, mark }]): [string, SettingBasis] => [
        id,
        { id, basisDocument: document, basisClause: clause, basisEdition: edition, basisMark: mark },
      ]),
  );
  return {
    ...emptyRoute(),
    ...Object.fromEntries(catalogues),
    settings: new Map([[settingsId, settings]]),
    settingBasis,
  };
}

/**
 * The loading districts of the catalogue.
 *
 * @throws Error when the asset is missing or breaks its schema
 */
export function shippedDistricts(assetsFolder: string): readonly LoadingDistrict[] {
  return z.array(tables.loadingDistrict).parse(readJson(join(assetsFolder, "catalogue", "loadingDistrict.json")));
}

function readJson(path: string): unknown {
  return JSON.parse(readFileSync(path, "utf8"));
}
