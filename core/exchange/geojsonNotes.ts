import { isRecord } from "./geometryPoint.ts";

/** Said of things that are larger than a point, after their count. */
export const middleWords = "lines, polygons or groups are read as one place each: their middle";

type Oddity = {
  readonly what: string;
  readonly holds: (feature: Record<string, unknown>, geometry: Record<string, unknown>) => boolean;
};

const foreignToFeature = ["coordinates", "geometries", "features"];
const foreignToGeometry = ["geometry", "properties", "features"];

/** What breaks RFC 7946, or is more than a place, without keeping a feature from being read. */
const oddities: readonly Oddity[] = [
  {
    what: middleWords,
    holds: (_, geometry) => geometry.type !== "Point",
  },
  {
    what: "features have an id that is neither text nor number; it is passed over",
    holds: ({ id }) => id !== undefined && !isName(id),
  },
  {
    what: "features have a broken bounding box; it is passed over",
    holds: (feature, geometry) => [feature.bbox, geometry.bbox].some(isBrokenBox),
  },
  {
    what: "features have members that belong elsewhere; they are passed over",
    holds: (feature, geometry) =>
      foreignToFeature.some((key) => Object.hasOwn(feature, key)) ||
      foreignToGeometry.some((key) => Object.hasOwn(geometry, key)),
  },
  {
    what: "polygons have a ring that turns the wrong way; it changes nothing here",
    holds: (_, geometry) => ringsOf(geometry).some(turnsWrong),
  },
  {
    what: "polygons have a ring whose two ends differ in height; it changes nothing here",
    holds: (_, geometry) => ringsOf(geometry).some(endsUnlike),
  },
  {
    what: "collections of geometries lie inside another; the first member gives the place",
    holds: (_, geometry) => isNested(geometry),
  },
];

/** One sentence for each way the features of a file are read otherwise than the file says, with how many there are. */
export function geojsonNotes(features: readonly unknown[]): string[] {
  return oddities.flatMap(({ what, holds }) => {
    const count = features.filter(
      (feature) => isRecord(feature) && isRecord(feature.geometry) && holds(feature, feature.geometry),
    ).length;
    return count === 0 ? [] : [`${count} ${what}.`];
  });
}

function isName(id: unknown): boolean {
  return typeof id === "string" || typeof id === "number";
}

function isBrokenBox(box: unknown): boolean {
  if (box === undefined) return false;
  return !Array.isArray(box) || (box.length !== 4 && box.length !== 6) || box.some((edge) => typeof edge !== "number");
}

function isNested({ geometries }: Record<string, unknown>): boolean {
  return (
    Array.isArray(geometries) && geometries.some((member) => isRecord(member) && member.type === "GeometryCollection")
  );
}

type Ring = { readonly isOuter: boolean; readonly positions: readonly unknown[] };

function ringsOf({ type, coordinates }: Record<string, unknown>): Ring[] {
  const polygons =
    type === "Polygon" ? [coordinates] : type === "MultiPolygon" && Array.isArray(coordinates) ? coordinates : [];
  return polygons.flatMap((polygon: unknown) =>
    Array.isArray(polygon)
      ? polygon.map((ring: unknown, index) => ({ isOuter: index === 0, positions: Array.isArray(ring) ? ring : [] }))
      : [],
  );
}

function endsUnlike({ positions }: Ring): boolean {
  const [first, last] = [positions[0], positions.at(-1)];
  return Array.isArray(first) && Array.isArray(last) && (first.length !== last.length || first[2] !== last[2]);
}

/** An outer ring runs counter-clockwise, a hole clockwise. */
function turnsWrong({ isOuter, positions }: Ring): boolean {
  let twiceArea = 0;
  for (const [index, to] of positions.slice(1).entries()) {
    const from = positions[index];
    if (!Array.isArray(from) || !Array.isArray(to)) return false;
    twiceArea += Number(from[0]) * Number(to[1]) - Number(to[0]) * Number(from[1]);
  }
  return isOuter ? twiceArea < 0 : twiceArea > 0;
}
