import { readFileSync } from "node:fs";
import { z } from "zod";
import { type Route, settingsId } from "../../core/model/route.ts";
import { tables } from "../../core/model/tables.ts";
import { changed, withRows } from "../fixtures/route/buildRoute.ts";

/** A figure of a row of the catalogue that every new route file starts with. */
export function catalogueFigure(table: string, id: string, column: string): number {
  const figure = catalogueRows(table).find((row) => row.id === id)?.[column];
  if (typeof figure !== "number") throw new Error(`the catalogue has no ${column} of ${id} in ${table}`);
  return figure;
}

/** Ids of a catalogue that every new route file starts with. */
export function catalogueIds(table: string): readonly string[] {
  return catalogueRows(table).map((row) => row.id);
}

/** A figure of the settings that every new route file starts with. */
export function settingsFigure(column: string): number {
  const file = new URL("../../assets/catalogue/settings.json", import.meta.url);
  return z.number().parse(Object(JSON.parse(readFileSync(file, "utf8")))[column]);
}

/** A route checked against a clearance set of the catalogue. */
export function underSet(route: Route, clearanceSetId: string): Route {
  const sets = z.array(tables.clearanceSet).parse(catalogueRows("clearanceSet"));
  const limits = z.array(tables.clearanceLimit).parse(catalogueRows("clearanceLimit"));
  return changed(withRows(route, "clearanceSet", sets, "clearanceLimit", limits), "settings", settingsId, {
    clearanceSetId,
  });
}

function catalogueRows(table: string) {
  const file = new URL(`../../assets/catalogue/${table}.json`, import.meta.url);
  return z.array(z.looseObject({ id: z.string() })).parse(JSON.parse(readFileSync(file, "utf8")));
}
