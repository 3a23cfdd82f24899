import type { PaperPoint } from "./displayList.ts";

/** A rectangle in any direction on paper, mm. */
export type OrientedBox = {
  readonly centre: PaperPoint;
  readonly width: number;
  readonly height: number;
  /** Turned counter-clockwise, rad. */
  readonly turnRad: number;
};

/**
 * A box given in the turned frame of an anchor.
 *
 * @param left,bottom  its lower left corner from the anchor before turning, mm
 */
export function turnedBox(
  anchor: PaperPoint,
  turnRad: number,
  left: number,
  bottom: number,
  width: number,
  height: number,
): OrientedBox {
  const x = left + width / 2;
  const y = bottom + height / 2;
  const centre = [
    anchor[0] + x * Math.cos(turnRad) - y * Math.sin(turnRad),
    anchor[1] + x * Math.sin(turnRad) + y * Math.cos(turnRad),
  ] as const;
  return { centre, width, height, turnRad };
}

/** The four corners, counter-clockwise. */
export function cornersOf(box: OrientedBox): readonly PaperPoint[] {
  const along = [(Math.cos(box.turnRad) * box.width) / 2, (Math.sin(box.turnRad) * box.width) / 2] as const;
  const across = [(-Math.sin(box.turnRad) * box.height) / 2, (Math.cos(box.turnRad) * box.height) / 2] as const;
  const corner = (a: number, b: number): PaperPoint => [
    box.centre[0] + a * along[0] + b * across[0],
    box.centre[1] + a * along[1] + b * across[1],
  ];
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** Smallest upright rectangle round points: left, bottom, right, top. */
export function boundsOf(points: readonly PaperPoint[]): readonly [number, number, number, number] {
  return [-farthest(points, -1, 0), -farthest(points, 0, -1), farthest(points, 1, 0), farthest(points, 0, 1)];
}

/** Touching by less than this on paper is not overlapping: a thousandth of a millimetre, below every writer's rounding. */
const hairMm = 0.001;

/** True where two convex outlines share more than an edge. */
export function outlinesTouch(a: readonly PaperPoint[], b: readonly PaperPoint[]): boolean {
  return !(separates(a, b) || separates(b, a));
}

/** True where an edge of the first outline has all of it on one side and all of the second on the other. Makes no lists: it is asked often. */
function separates(a: readonly PaperPoint[], b: readonly PaperPoint[]): boolean {
  let from = a.at(-1);
  for (const to of a) {
    if (!from) return false;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length > 0) {
      const x = (to[1] - from[1]) / length;
      const y = (from[0] - to[0]) / length;
      if (farthest(a, x, y) <= -farthest(b, -x, -y) + hairMm) return true;
      if (farthest(b, x, y) <= -farthest(a, -x, -y) + hairMm) return true;
    }
    from = to;
  }
  return false;
}

/** How far points reach in a direction, mm. */
function farthest(points: readonly PaperPoint[], x: number, y: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const point of points) {
    const reach = point[0] * x + point[1] * y;
    if (reach > most) most = reach;
  }
  return most;
}
