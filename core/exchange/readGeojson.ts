import { fail, type Result } from "../model/result.ts";
import { type BadRow, shownValue } from "./badRow.ts";
import { geojsonNotes } from "./geojsonNotes.ts";
import { isRecord, pointOfGeometry } from "./geometryPoint.ts";
import { type PlacedRow, placedTable } from "./placedRows.ts";
import { type Table, tableLimits } from "./table.ts";

const geometryTypes = new Set([
  "Point",
  "MultiPoint",
  "LineString",
  "MultiLineString",
  "Polygon",
  "MultiPolygon",
  "GeometryCollection",
]);
const lonLatSystem = /CRS:?84$|EPSG:+(?:[\d.]*:)?4326$/i;

/**
 * Reads GeoJSON into a table: one row a feature, its properties as columns, its place as `lon` and `lat`. A line or polygon is
 * read as one place (see pointOfGeometry). A feature that breaks the format is reported and the others are kept; a property
 * named `lon` or `lat` stands beside the geometry's own, which counts.
 *
 * @param name name of the file, for messages
 * @param text the whole file
 * @source RFC 7946, The GeoJSON Format, 2016; coordinate systems other than longitude and latitude (its 2008 ancestor) are refused
 */
export function readGeojson(name: string, text: string): Result<Table> {
  if (text.length > tableLimits.textLength) {
    return fail("too-large", "The file is too large to read as text.", name, "Cut it to the area of this route.");
  }
  const plain = text.replace(/^\uFEFF/, "");
  let json: unknown;
  try {
    json = JSON.parse(plain);
  } catch (error) {
    return notJson(name, plain, error instanceof Error ? error.message : "");
  }
  const features = featuresOf(name, json);
  return features.ok ? tableOf(name, features.value) : features;
}

function notJson(name: string, text: string, message: string): Result<Table> {
  const told = /position (\d+)/.exec(message)?.[1];
  const position = /end of JSON/.test(message) ? text.length : told === undefined ? null : Number(told);
  const line = position === null ? "" : `, line ${text.slice(0, position).trimEnd().split("\n").length}`;
  return fail(
    "not-json",
    "The file is not JSON, or it was cut off.",
    `${name}${line}`,
    "Export it again as GeoJSON, or open it in a text editor and mend that line.",
  );
}

function featuresOf(name: string, json: unknown): Result<readonly unknown[]> {
  if (!isRecord(json)) return notGeojson(name, "The file holds no GeoJSON object.");
  const crs = namedSystem(json.crs);
  if (crs !== null && !lonLatSystem.test(crs)) {
    return fail(
      "other-grid",
      `The file is in another coordinate system (${shownValue(crs)}).`,
      name,
      "Export it in longitude and latitude (WGS 84), or as CSV with grid columns.",
    );
  }
  if (json.type === "FeatureCollection") {
    return Array.isArray(json.features)
      ? { ok: true, value: json.features }
      : notGeojson(name, "The collection has no list of features.");
  }
  if (json.type === "Feature") return { ok: true, value: [json] };
  if (typeof json.type === "string" && geometryTypes.has(json.type)) {
    return { ok: true, value: [{ type: "Feature", properties: null, geometry: json }] };
  }
  if (json.type === undefined) return notGeojson(name, "The object does not say what type it is.");
  return notGeojson(name, `"${shownValue(String(json.type))}" is no GeoJSON type.`);
}

function namedSystem(crs: unknown): string | null {
  if (crs === undefined || crs === null) return null;
  const named = isRecord(crs) && isRecord(crs.properties) ? crs.properties.name : undefined;
  return typeof named === "string" ? named : "not named";
}

function notGeojson<T>(name: string, what: string): Result<T> {
  return fail(
    "not-geojson",
    what,
    name,
    "Give a FeatureCollection, a Feature or a geometry; types are spelt as in RFC 7946.",
  );
}

function tableOf(name: string, features: readonly unknown[]): Result<Table> {
  const bad: BadRow[] = [];
  const read: PlacedRow[] = [];
  const taken = features.length > tableLimits.rowCount ? [] : features;
  taken.forEach((feature, index) => {
    const one = readFeature(feature, index + 1);
    if ("what" in one) bad.push({ file: name, line: index + 1, column: "", value: shownJson(feature), ...one });
    else read.push(one);
  });
  return placedTable({ name, lineWord: "feature", bad, notes: geojsonNotes(taken) }, read, features.length);
}

function readFeature(feature: unknown, line: number): PlacedRow | Pick<BadRow, "what" | "accepted"> {
  if (!isRecord(feature) || feature.type !== "Feature") {
    return {
      what: "A member of the collection is not a Feature.",
      accepted: '"type": "Feature" with geometry and properties',
    };
  }
  const { properties, geometry, id } = feature;
  if (properties !== null && properties !== undefined && !isRecord(properties)) {
    return { what: "The feature's properties are not an object.", accepted: "an object of named values, or null" };
  }
  if (geometry === undefined) return { what: "The feature has no geometry.", accepted: "a geometry, or null" };
  const values = new Map(Object.entries(properties ?? {}).map(([key, value]) => [key, cellOf(value)]));
  if ((typeof id === "string" || typeof id === "number") && !values.has("id")) values.set("id", String(id));
  if (geometry === null) return { line, point: null, values };
  const place = pointOfGeometry(geometry);
  return place.ok ? { line, point: place.point, values } : { what: place.what, accepted: place.accepted };
}

function cellOf(value: unknown): string {
  if (value === null || value === undefined) return "";
  return typeof value === "object" ? shownJson(value) : String(value);
}

/** JSON may nest deeper than it can be written back; such a value is only shown, so it is named instead. */
function shownJson(value: unknown): string {
  try {
    return shownValue(JSON.stringify(value) ?? "");
  } catch {
    return "(deeply nested)";
  }
}
