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
  const xs = points.map((one) => one[0]);
  const ys = points.map((one) => one[1]);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Touching by less than this on paper is not overlapping: a thousandth of a millimetre, below every writer's rounding. */
const hairMm = 0.001;

/** True where two convex outlines share more than an edge. */
export function outlinesTouch(a: readonly PaperPoint[], b: readonly PaperPoint[]): boolean {
  return !(separates(a, b) || separates(b, a));
}

function separates(a: readonly PaperPoint[], b: readonly PaperPoint[]): boolean {
  return a.some((from, index) => {
    const to = a[(index + 1) % a.length] ?? from;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length === 0) return false;
    const normal = [(to[1] - from[1]) / length, (from[0] - to[0]) / length] as const;
    const reach = (points: readonly PaperPoint[]) => points.map((one) => one[0] * normal[0] + one[1] * normal[1]);
    const [own, other] = [reach(a), reach(b)];
    return Math.max(...own) <= Math.min(...other) + hairMm || Math.max(...other) <= Math.min(...own) + hairMm;
  });
}
