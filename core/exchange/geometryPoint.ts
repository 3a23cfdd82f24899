import type { LonLat } from "../geodesy/lonLat.ts";

/** The place that stands for a geometry, or what is wrong with it. */
export type GeometryPoint =
  | { readonly ok: true; readonly point: LonLat }
  | { readonly ok: false; readonly what: string; readonly accepted: string };

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly what: string };

/** Whether a value read from JSON is an object with named members. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const accepted = "a Point, LineString or Polygon (or Multi of them) as RFC 7946 writes it, longitude first";

/**
 * One place for a geometry: a point itself, the middle of a line along its length, the centre of area of a polygon's outer
 * ring. Of several parts the longest or largest; of several points their mean; of a collection its first member.
 *
 * @param geometry a value read from JSON, of any shape
 */
export function pointOfGeometry(geometry: unknown): GeometryPoint {
  const read = pointOf(geometry, true);
  return read.ok ? { ok: true, point: read.value } : { ok: false, what: read.what, accepted };
}

function pointOf(geometry: unknown, mayNest: boolean): Read<LonLat> {
  if (!isRecord(geometry)) return problem("The geometry is not an object.");
  const { type, coordinates } = geometry;
  switch (type) {
    case "Point":
      return position(coordinates);
    case "MultiPoint":
      return mapRead(line(coordinates, 1), mean);
    case "LineString":
      return mapRead(line(coordinates, 2), middle);
    case "MultiLineString":
      return mapRead(
        parts(coordinates, (part) => line(part, 2)),
        (lines) => middle(largest(lines, lengthOf)),
      );
    case "Polygon":
      return mapRead(rings(coordinates), centre);
    case "MultiPolygon":
      return mapRead(parts(coordinates, rings), (outer) => centre(largest(outer, (ring) => Math.abs(areaOf(ring)))));
    case "GeometryCollection":
      return ofCollection(geometry.geometries, mayNest);
    default:
      return problem(`"${String(type).slice(0, 40)}" is no geometry type.`);
  }
}

function ofCollection(members: unknown, mayNest: boolean): Read<LonLat> {
  if (!mayNest) return problem("A collection of geometries lies inside another.");
  if (!Array.isArray(members)) return problem("The collection has no list of geometries.");
  return members.length === 0 ? problem("The collection of geometries is empty.") : pointOf(members[0], false);
}

function position(value: unknown): Read<LonLat> {
  if (!Array.isArray(value) || value.length < 2) return problem("A position needs a longitude and a latitude.");
  const [lonDeg, latDeg] = value;
  const isPlace =
    typeof lonDeg === "number" &&
    typeof latDeg === "number" &&
    value.every((one) => typeof one === "number" && Number.isFinite(one));
  return isPlace ? { ok: true, value: [lonDeg, latDeg] } : problem("A coordinate is not a number.");
}

function line(value: unknown, leastCount: number): Read<LonLat[]> {
  const points = parts(value, position);
  if (points.ok && points.value.length < leastCount) return problem(`It needs at least ${leastCount} positions.`);
  return points;
}

/** Checks every ring and keeps the outer one. */
function rings(value: unknown): Read<LonLat[]> {
  const all = parts(value, (part) => line(part, 4));
  if (!all.ok) return all;
  const isClosed = all.value.every((ring) => ring[0]?.[0] === ring.at(-1)?.[0] && ring[0]?.[1] === ring.at(-1)?.[1]);
  if (!isClosed) return problem("A polygon's ring does not end where it starts.");
  return { ok: true, value: all.value[0] ?? [] };
}

function parts<T>(value: unknown, read: (part: unknown) => Read<T>): Read<T[]> {
  if (!Array.isArray(value) || value.length === 0) return problem("The list of positions is missing or empty.");
  const found: T[] = [];
  for (const part of value) {
    const one = read(part);
    if (!one.ok) return one;
    found.push(one.value);
  }
  return { ok: true, value: found };
}

function largest(candidates: readonly LonLat[][], measure: (points: LonLat[]) => number): LonLat[] {
  return candidates.reduce((best, next) => (measure(next) > measure(best) ? next : best), candidates[0] ?? []);
}

function mean(points: readonly LonLat[]): LonLat {
  const sum = points.reduce(([lon, lat], point) => [lon + point[0], lat + point[1]] as const, [0, 0] as const);
  return [sum[0] / points.length, sum[1] / points.length];
}

function lengthOf(points: readonly LonLat[]): number {
  return legs(points).reduce((sum, [from, to]) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
}

function middle(points: readonly LonLat[]): LonLat {
  let left = lengthOf(points) / 2;
  for (const [from, to] of legs(points)) {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length > 0 && left <= length) {
      return [from[0] + ((to[0] - from[0]) * left) / length, from[1] + ((to[1] - from[1]) * left) / length];
    }
    left -= length;
  }
  return mean(points);
}

function areaOf(ring: readonly LonLat[]): number {
  const [x, y] = ring[0] ?? [0, 0];
  return legs(ring).reduce((sum, [a, b]) => sum + ((a[0] - x) * (b[1] - y) - (b[0] - x) * (a[1] - y)) / 2, 0);
}

/** Centre of area, worked from the first corner so that nothing is lost between large coordinates. */
function centre(ring: readonly LonLat[]): LonLat {
  const [x, y] = ring[0] ?? [0, 0];
  const area = areaOf(ring);
  if (area === 0) return mean(ring.slice(1));
  let lon = 0;
  let lat = 0;
  for (const [a, b] of legs(ring)) {
    const cross = (a[0] - x) * (b[1] - y) - (b[0] - x) * (a[1] - y);
    lon += (a[0] + b[0] - 2 * x) * cross;
    lat += (a[1] + b[1] - 2 * y) * cross;
  }
  return [x + lon / (6 * area), y + lat / (6 * area)];
}

function legs(points: readonly LonLat[]): (readonly [LonLat, LonLat])[] {
  return points.slice(1).map((to, index) => [points[index] ?? to, to] as const);
}

function mapRead<T, U>(read: Read<T>, change: (value: T) => U): Read<U> {
  return read.ok ? { ok: true, value: change(read.value) } : read;
}

function problem<T>(what: string): Read<T> {
  return { ok: false, what };
}
