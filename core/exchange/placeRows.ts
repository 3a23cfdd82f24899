import { distanceM } from "../geodesy/distance.ts";
import { openLocalGrid } from "../geodesy/localGrid.ts";
import type { LonLat } from "../geodesy/lonLat.ts";
import type { Grid } from "../geodesy/transverseMercator.ts";
import { fail, ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { BadRow } from "./badRow.ts";
import type { Place } from "./readPlace.ts";

/** A row with its position on the route's grid, rounded to 1 mm. */
export type Placed<T> = {
  readonly row: T;
  readonly eastM: number;
  readonly northM: number;
  readonly lonLat: LonLat | null;
};

/** Rows on the route's grid, and the origin the route gets where it had none. */
export type PlacedRows<T> = {
  readonly placed: readonly Placed<T>[];
  readonly bad: readonly BadRow[];
  readonly origin: RowChange | null;
};

type Row = { readonly fileLine: number; readonly place: Place };

/** A route is not longer than this; a place farther out is a mistake, and the grid would stretch there. */
const farthestM = 100_000;

/** The grid of a route that has an origin; null where it is on a local grid of its own. */
export function gridOfRoute(route: Route): Grid | null {
  const { originLonDeg, originLatDeg } = settingsOf(route);
  return originLonDeg === null || originLatDeg === null
    ? null
    : openLocalGrid({ lonDeg: originLonDeg, latDeg: originLatDeg });
}

/** True where the route's rows stand on a local grid that has no place on the globe. */
export function isOnLocalGrid(route: Route): boolean {
  return settingsOf(route).originLonDeg === null && route.pole.size + route.livingUnit.size > 0;
}

/**
 * Puts rows on the route's grid. The first longitudes and latitudes give the route its origin: their mean, to 5 decimals.
 *
 * Refuses with "mixed-grid" where the rows are on another kind of grid than the route; a place more than 100 km off is a bad row.
 */
export function placeRows<T extends Row>(route: Route, file: string, rows: readonly T[]): Result<PlacedRows<T>> {
  const first = rows[0];
  if (!first) return ok({ placed: [], bad: [], origin: null });
  const { originLonDeg, originLatDeg } = settingsOf(route);
  const hasOrigin = originLonDeg !== null && originLatDeg !== null;
  if (first.place.system === "grid")
    return hasOrigin ? mixed(file, "a local grid", "on the globe") : ok(onLocalGrid(file, rows));
  if (isOnLocalGrid(route)) return mixed(file, "on the globe", "a local grid");
  const around: LonLat = hasOrigin
    ? [originLonDeg, originLatDeg]
    : median(rows.map(({ place }) => lonLatOf(place)).filter((one) => one !== null));
  const bad: BadRow[] = [];
  const near: { readonly row: T; readonly lonLat: LonLat }[] = [];
  for (const row of rows) {
    const lonLat = lonLatOf(row.place);
    if (!lonLat) continue;
    if (distanceM(around, lonLat) <= farthestM) near.push({ row, lonLat });
    else bad.push(tooFar(file, row.fileLine, lonLat, around));
  }
  const origin = hasOrigin
    ? null
    : originChange(
        route,
        near.map(({ lonLat }) => lonLat),
      );
  const [lonDeg, latDeg] = origin?.at ?? around;
  const grid = openLocalGrid({ lonDeg, latDeg });
  const placed = near.map(({ row, lonLat }) => ({ row, ...onMm(grid.toGrid(lonLat)), lonLat }));
  return ok({ placed, bad, origin: origin?.change ?? null });
}

function mixed<T>(file: string, given: string, present: string): Result<T> {
  return fail(
    "mixed-grid",
    `The file's places are ${given} and the route's are ${present}.`,
    file,
    "Give places of the same kind as the route's, or start a new route for this file.",
  );
}

function onLocalGrid<T extends Row>(file: string, rows: readonly T[]): PlacedRows<T> {
  const placed: Placed<T>[] = [];
  const bad: BadRow[] = [];
  for (const row of rows) {
    if (row.place.system !== "grid") continue;
    if (Math.max(Math.abs(row.place.eastM), Math.abs(row.place.northM)) <= 1e8)
      placed.push({ row, ...onMm(row.place), lonLat: null });
    else
      bad.push({
        file,
        line: row.fileLine,
        column: "",
        value: `${row.place.eastM}, ${row.place.northM}`,
        what: "The place is farther off than any grid reaches.",
        accepted: "east and north within 100,000 km",
      });
  }
  return { placed, bad, origin: null };
}

function lonLatOf(place: Place): LonLat | null {
  return place.system === "lonLat" ? [place.lonDeg, place.latDeg] : null;
}

function median(points: readonly LonLat[]): LonLat {
  const middle = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
  return [middle(points.map(([lonDeg]) => lonDeg)), middle(points.map(([, latDeg]) => latDeg))];
}

function originChange(route: Route, points: readonly LonLat[]): { readonly at: LonLat; readonly change: RowChange } {
  const before = settingsOf(route);
  const mean = (at: 0 | 1): number =>
    Math.round((points.reduce((sum, point) => sum + point[at], 0) / points.length) * 1e5) / 1e5;
  const [originLonDeg, originLatDeg] = [mean(0), mean(1)];
  const after = { ...before, originLonDeg, originLatDeg };
  return { at: [originLonDeg, originLatDeg], change: { table: "settings", id: before.id, before, after } };
}

function tooFar(file: string, line: number, [lonDeg, latDeg]: LonLat, around: LonLat): BadRow {
  const isSwapped = Math.abs(lonDeg) <= 90 && distanceM(around, [latDeg, lonDeg]) <= farthestM;
  const what = isSwapped
    ? "Longitude and latitude seem to be swapped: the other way round the place is near the route."
    : "The place is more than 100 km from the others.";
  return {
    file,
    line,
    column: "",
    value: `lon ${lonDeg}, lat ${latDeg}`,
    what,
    accepted: "a place near the route, longitude and latitude each in its column",
  };
}

function onMm(point: { readonly eastM: number; readonly northM: number }): { eastM: number; northM: number } {
  return { eastM: mm(point.eastM), northM: mm(point.northM) };
}

function mm(valueM: number): number {
  return Math.round(valueM * 1000) / 1000 + 0;
}
