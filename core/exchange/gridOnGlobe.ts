import type { Grid } from "../geodesy/transverseMercator.ts";
import { fail, ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import { gridOfRoute } from "./placeRows.ts";

/** The grid of a route that has a place on the globe; refuses with "no-origin" where it stands on a local grid. */
export function gridOnGlobe(route: Route): Result<Grid> {
  const grid = gridOfRoute(route);
  if (grid) return ok(grid);
  return fail(
    "no-origin",
    "The route stands on a local grid, so its places on the globe are not known.",
    settingsOf(route).routeName,
    "Export it as CSV or DXF, or import its poles with longitude and latitude.",
  );
}
