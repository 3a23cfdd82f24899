import type { LonLat } from "../geodesy/lonLat.ts";
import type { Grid } from "../geodesy/transverseMercator.ts";
import { fail, ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import { dropEnds, dropRunM } from "../plant/dropView.ts";
import { type Point, pointOnSpan, spanEnds } from "../plant/geometry.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { portsOf, terminalPlace } from "../plant/terminalView.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { type Cells, layerCell, lengthCell, livingUnitCells, poleCells } from "./exportColumns.ts";
import { gridOfRoute } from "./placeRows.ts";
import { poleJoins } from "./poleJoins.ts";
import { siteCells } from "./siteCells.ts";
import { type Shape, siteShape } from "./siteShapes.ts";

/** Tables that have a place on the ground, in the order they are written. */
export const geojsonTables = [
  "pole",
  "span",
  "terminal",
  "slack",
  "closure",
  "crossing",
  "groundPoint",
  "structure",
  "guy",
  "livingUnit",
  "drop",
  "dropCrossing",
] as const;

export type GeojsonTable = (typeof geojsonTables)[number];

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
export function writeGeojson(route: Route, only: readonly GeojsonTable[] = geojsonTables): Result<string> {
  const grid = gridOfRoute(route);
  if (!grid) {
    return fail(
      "no-origin",
      "The route stands on a local grid, so its places on the globe are not known.",
      settingsOf(route).routeName,
      "Export it as CSV, or import its poles with longitude and latitude.",
    );
  }
  const plant = openPlant(route);
  const source = { plant, joins: poleJoins(route) };
  const features = geojsonTables
    .filter((table) => only.includes(table))
    .flatMap((table) =>
      plant.all(table).map((id) => JSON.stringify({ type: "Feature", ...featureOf(source, grid, table, id) })),
    );
  return ok(`{"type":"FeatureCollection","features":[\n${features.join(",\n")}\n]}\n`);
}

/** What features are written from; `joins` as poleJoins gives them. */
type Source = { readonly plant: Plant; readonly joins: ReadonlyMap<string, string> };

function featureOf(source: Source, grid: Grid, table: GeojsonTable, id: string): Feature {
  const { shape, cells } = contentOf(source, table, id, source.plant.settings().unitSystem);
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

type Content = { readonly shape: Shape; readonly cells: Cells };

function contentOf({ plant, joins }: Source, table: GeojsonTable, id: string, system: UnitSystem): Content {
  switch (table) {
    case "pole": {
      const pole = plant.rowOf("pole", id);
      return { shape: { at: pole }, cells: poleCells(pole, joins.get(id) ?? "", system) };
    }
    case "livingUnit": {
      const unit = plant.rowOf("livingUnit", id);
      return { shape: { at: unit }, cells: livingUnitCells(unit, system) };
    }
    case "span":
      return spanContent(plant, id, system);
    case "terminal":
      return terminalContent(plant, id, system);
    case "drop":
      return dropContent(plant, id, system);
    case "slack": {
      const { kind, storedM, cableId, spanId, offsetM } = plant.rowOf("slack", id);
      const cells = { kind, ...lengthCell("stored", storedM, system), cable: plant.rowOf("cable", cableId).name };
      return { shape: { at: pointOnSpan(plant, spanId, offsetM) }, cells };
    }
    case "closure": {
      const { name, cableId, spanId, offsetM, note } = plant.rowOf("closure", id);
      return {
        shape: { at: pointOnSpan(plant, spanId, offsetM) },
        cells: { name, cable: plant.rowOf("cable", cableId).name, note },
      };
    }
    case "crossing":
    case "groundPoint":
    case "structure":
    case "guy":
    case "dropCrossing":
      return { shape: siteShape(plant, table, id), cells: siteCells(plant, table, id, system) };
  }
}

function spanContent(plant: Plant, id: string, system: UnitSystem): Content {
  const { lengthM, origin, note } = plant.rowOf("span", id);
  const { from, to } = spanEnds(plant, id);
  const cells = { from_pole: from.tag, to_pole: to.tag, ...lengthCell("length", lengthM, system), origin, note };
  return { shape: { along: [from, to] }, cells };
}

function terminalContent(plant: Plant, id: string, system: UnitSystem): Content {
  const { name, terminalModelId, pinned, reason } = plant.rowOf("terminal", id);
  const place = terminalPlace(plant, id);
  const ports = portsOf(plant, id);
  const cells = {
    name,
    model: plant.rowOf("terminalModel", terminalModelId).name,
    pole: plant.rowOf("pole", place.poleId).tag,
    ...lengthCell("from_pole", place.fromPoleM, system),
    port_count: ports.length,
    used_port_count: ports.filter((port) => port.dropIds.length > 0).length,
    reserved_port_count: ports.filter((port) => port.isReserved).length,
    pinned,
    reason,
  };
  return { shape: { at: place }, cells };
}

function dropContent(plant: Plant, id: string, system: UnitSystem): Content {
  const { terminalId, port, livingUnitId } = plant.rowOf("drop", id);
  const { from, to } = dropEnds(plant, id);
  const cells = {
    terminal: plant.rowOf("terminal", terminalId).name,
    port,
    address: plant.rowOf("livingUnit", livingUnitId).address,
    ...lengthCell("run", dropRunM(plant, id), system),
  };
  return { shape: { along: [from, to] }, cells };
}
