import type { LonLat } from "../geodesy/lonLat.ts";
import type { Grid } from "../geodesy/transverseMercator.ts";
import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { Point } from "../plant/geometry.ts";
import { openPlant } from "../plant/plant.ts";
import { type Cells, layerCell } from "./exportColumns.ts";
import { gridOnGlobe } from "./gridOnGlobe.ts";
import { type PlacedSource, type PlacedTable, placedContent, placedTables } from "./placedContent.ts";
import { poleJoins } from "./poleJoins.ts";
import type { Shape } from "./siteShapes.ts";

type Feature = { readonly id: string; readonly geometry: Geometry; readonly properties: Cells };
type Geometry =
  | { readonly type: "Point"; readonly coordinates: LonLat }
  | { readonly type: "LineString"; readonly coordinates: readonly LonLat[] };

/**
 * Writes a route as GeoJSON: every table that has a place, or only those asked for. Things hung on a span stand where they hang.
 * Longitude comes first, to 7 decimals (about 1 cm); lengths are in the route's units, named in the property.
 *
 * Refuses with "no-origin" where the route stands on a local grid, which has no place on the globe.
 *
 * @source RFC 7946, The GeoJSON Format, 2016
 */
export function writeGeojson(route: Route, only: readonly PlacedTable[] = placedTables): Result<string> {
  const grid = gridOnGlobe(route);
  if (!grid.ok) return grid;
  const plant = openPlant(route);
  const source = { plant, joins: poleJoins(route) };
  const features = placedTables
    .filter((table) => only.includes(table))
    .flatMap((table) =>
      plant.all(table).map((id) => JSON.stringify({ type: "Feature", ...featureOf(source, grid.value, table, id) })),
    );
  return ok(`{"type":"FeatureCollection","features":[\n${features.join(",\n")}\n]}\n`);
}

function featureOf(source: PlacedSource, grid: Grid, table: PlacedTable, id: string): Feature {
  const { shape, cells } = placedContent(source, table, id, source.plant.settings().unitSystem);
  return { id, geometry: geometryOf(grid, shape), properties: { ...layerCell(table), ...cells } };
}

function geometryOf(grid: Grid, shape: Shape): Geometry {
  const place = (point: Point): LonLat => {
    const [lonDeg, latDeg] = grid.toLonLat(point);
    return [Number(lonDeg.toFixed(7)), Number(latDeg.toFixed(7))];
  };
  return "at" in shape
    ? { type: "Point", coordinates: place(shape.at) }
    : { type: "LineString", coordinates: shape.along.map(place) };
}
