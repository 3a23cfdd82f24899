import { readFileSync } from "node:fs";
import { applyChange } from "../../../core/edits/change.ts";
import type { ImportPlan, ImportRequest } from "../../../core/exchange/importPlan.ts";
import { planImport } from "../../../core/exchange/planImport.ts";
import { readCsv } from "../../../core/exchange/readCsv.ts";
import { readGeojson } from "../../../core/exchange/readGeojson.ts";
import type { Table } from "../../../core/exchange/table.ts";
import type { Result } from "../../../core/model/result.ts";
import { emptyRoute, type Route, settingsOf } from "../../../core/model/route.ts";
import type { Settings } from "../../../core/model/tables.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

/** A route with settings and nothing on the ground. */
export function bareRoute(settings: Partial<Settings> = {}): Route {
  const row = { ...settingsOf(smallRoute()), ...settings };
  return { ...emptyRoute(), settings: new Map([[row.id, row]]) };
}

export function valueIn<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.fault.code}: ${result.fault.what} (${result.fault.where})`);
  return result.value;
}

export function csv(text: string, name = "list.csv"): Table {
  return valueIn(readCsv(name, text));
}

export function geojsonFixture(name: string): Table {
  return valueIn(readGeojson(name, fixtureText(name)));
}

export function fixtureText(name: string): string {
  return readFileSync(
    new URL(`../../fixtures/exchange/${encodeURIComponent(name).replaceAll("%2F", "/")}`, import.meta.url),
    "utf8",
  );
}

/** A plan that takes good rows and skips what is there, unless the test asks otherwise. */
export function planOf(
  route: Route,
  request: Pick<ImportRequest, "kind" | "table"> & Partial<ImportRequest>,
): ImportPlan {
  return valueIn(planImport(route, { onBad: "takeGood", onExisting: "skip", ...request }));
}

export function applied(route: Route, plan: ImportPlan): Route {
  return valueIn(applyChange(route, { rows: plan.rows }));
}
