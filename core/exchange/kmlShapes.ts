import { type GeometryPoint, pointOfGeometry } from "./geometryPoint.ts";
import { kmlPositions } from "./kmlPositions.ts";

/** The shapes of one placemark, gathered as they are read. */
type KmlShapes = {
  /** @param parents  names of the elements around a `coordinates`, the root first */
  readonly addCoordinates: (text: string, parents: readonly string[]) => void;
  /** The rings since the last polygon are one, the outer first whatever their order in the file. */
  readonly endPolygon: () => void;
  /** The one place that stands for all of them, or what is wrong with them; null where there is none. */
  readonly place: () => GeometryPoint | null;
  /** Whether there is more than a point. */
  readonly isLarge: () => boolean;
};

/** Most positions of one placemark: all are held to find their middle. A survey's line has thousands. */
const mostPositions = 1_000_000;
const accepted = "a Point, LineString or Polygon with coordinates as lon,lat, longitude first";

export function kmlShapes(): KmlShapes {
  const shapes: Shape[] = [];
  let rings: { readonly isOuter: boolean; readonly positions: unknown }[] = [];
  let left = mostPositions;
  return {
    addCoordinates(text, parents) {
      const shape = parents.at(-1);
      if (shape !== "Point" && shape !== "LineString" && shape !== "LinearRing") return;
      const positions = kmlPositions(text, left + 1);
      left -= positions.length;
      const boundary = parents.at(-2);
      if (shape === "Point") shapes.push({ type: "Point", coordinates: positions.length === 1 ? positions[0] : [] });
      else if (shape === "LineString") shapes.push({ type: "LineString", coordinates: positions });
      else if (boundary === "outerBoundaryIs" || boundary === "innerBoundaryIs")
        rings.push({ isOuter: boundary === "outerBoundaryIs", positions });
      else shapes.push({ type: "Polygon", coordinates: [positions] });
    },
    endPolygon() {
      const inOrder = [...rings.filter((ring) => ring.isOuter), ...rings.filter((ring) => !ring.isOuter)];
      shapes.push({ type: "Polygon", coordinates: inOrder.map((ring) => ring.positions) });
      rings = [];
    },
    place() {
      if (left < 0) return { ok: false, what: "It has more positions than can be read.", accepted };
      if (shapes.length === 0) return null;
      const place = pointOfGeometry(grouped(shapes));
      return place.ok ? place : { ...place, accepted };
    },
    isLarge: () => shapes.length > 1 || shapes.some((one) => one.type !== "Point"),
  };
}

type Shape = { readonly type: string; readonly coordinates: unknown };

/** Shapes of one kind as the many of that kind, others as a collection. */
function grouped(shapes: readonly Shape[]): object | undefined {
  const [first] = shapes;
  if (!first || shapes.length === 1) return first;
  return shapes.every((one) => one.type === first.type)
    ? { type: `Multi${first.type}`, coordinates: shapes.map((one) => one.coordinates) }
    : { type: "GeometryCollection", geometries: shapes };
}
