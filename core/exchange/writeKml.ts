import type { Grid } from "../geodesy/transverseMercator.ts";
import { ok, type Result } from "../model/result.ts";
import { type Route, settingsOf } from "../model/route.ts";
import type { Point } from "../plant/geometry.ts";
import { spanName } from "../plant/names.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { markupText } from "../units/markupText.ts";
import { type Cells, layerCell } from "./exportColumns.ts";
import { gridOnGlobe } from "./gridOnGlobe.ts";
import { type PlacedTable, placedContent, placedTables } from "./placedContent.ts";
import { poleJoins } from "./poleJoins.ts";
import type { Shape } from "./siteShapes.ts";

/** What a table is called as a folder, and the colour of its lines: opacity, blue, green, red. */
const folders: Readonly<Record<PlacedTable, { readonly name: string; readonly colour: string }>> = {
  pole: { name: "Poles", colour: "ffffffff" },
  span: { name: "Spans", colour: "ffff8000" },
  terminal: { name: "Terminals", colour: "ff0000ff" },
  slack: { name: "Coils", colour: "ffff00ff" },
  closure: { name: "Closures", colour: "ff0080ff" },
  crossing: { name: "Crossings", colour: "ff00a5ff" },
  groundPoint: { name: "Ground points", colour: "ff808080" },
  structure: { name: "Structures", colour: "ff808080" },
  guy: { name: "Guys", colour: "ff004b96" },
  livingUnit: { name: "Living units", colour: "ffc0c0c0" },
  drop: { name: "Drops", colour: "ffffff00" },
  dropCrossing: { name: "Under drops", colour: "ff00a5ff" },
};

/**
 * Writes a route as KML: a folder for each table that has a place, a placemark for each row, its figures beside it in the route's
 * units. Everything lies on the ground: heights are among the figures. Longitude and latitude to 7 decimals, about 1 cm.
 *
 * Refuses with "no-origin" where the route stands on a local grid, which has no place on the globe.
 *
 * @source OGC 12-007r2, KML 2.3, and OGC 07-147r2, KML 2.2, whose elements alone are used; from memory
 */
export function writeKml(route: Route): Result<string> {
  const grid = gridOnGlobe(route);
  if (!grid.ok) return grid;
  const plant = openPlant(route);
  const source = { plant, joins: poleJoins(route) };
  const written = placedTables.filter((table) => plant.all(table).length > 0);
  const placemark = (table: PlacedTable, id: string) => {
    const { shape, cells } = placedContent(source, table, id, plant.settings().unitSystem);
    return [
      `<Placemark id="${markupText(id)}"><name>${markupText(nameOf(plant, table, id))}</name><styleUrl>#${table}</styleUrl>`,
      extendedData({ ...layerCell(table), ...cells }),
      `${geometry(grid.value, shape)}</Placemark>`,
    ].join("");
  };
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<kml xmlns="http://www.opengis.net/kml/2.2"><Document>',
    `<name>${markupText(settingsOf(route).routeName)}</name>`,
    ...written.map((table) => style(table)),
    ...written.flatMap((table) => [
      `<Folder><name>${folders[table].name}</name>`,
      ...plant.all(table).map((id) => placemark(table, id)),
      "</Folder>",
    ]),
    "</Document></kml>",
  ];
  return ok(`${lines.join("\n")}\n`);
}

function style(table: PlacedTable): string {
  const { colour } = folders[table];
  const icon = `<IconStyle><color>${colour}</color><scale>0.7</scale></IconStyle>`;
  return `<Style id="${table}">${icon}<LineStyle><color>${colour}</color><width>2</width></LineStyle></Style>`;
}

function extendedData(cells: Cells): string {
  const data = Object.entries(cells).flatMap(([name, value]) =>
    value === null || value === ""
      ? []
      : [`<Data name="${markupText(name)}"><value>${markupText(String(value))}</value></Data>`],
  );
  return `<ExtendedData>${data.join("")}</ExtendedData>`;
}

function geometry(grid: Grid, shape: Shape): string {
  const place = (point: Point) =>
    grid
      .toLonLat(point)
      .map((degrees) => Number(degrees.toFixed(7)))
      .join(",");
  return "at" in shape
    ? `<Point><coordinates>${place(shape.at)}</coordinates></Point>`
    : `<LineString><tessellate>1</tessellate><coordinates>${shape.along.map(place).join(" ")}</coordinates></LineString>`;
}

/** What a placemark is called on the map. */
function nameOf(plant: Plant, table: PlacedTable, id: string): string {
  switch (table) {
    case "pole":
      return plant.rowOf("pole", id).tag;
    case "terminal":
    case "closure":
    case "crossing":
    case "structure":
    case "dropCrossing":
      return plant.rowOf(table, id).name;
    case "livingUnit":
      return plant.rowOf("livingUnit", id).address;
    case "guy":
      return plant.rowOf("pole", plant.rowOf("guy", id).poleId).tag;
    case "drop":
      return plant.rowOf("livingUnit", plant.rowOf("drop", id).livingUnitId).address;
    case "span":
      return spanName(plant, id);
    case "slack":
    case "groundPoint":
      return "";
  }
}
