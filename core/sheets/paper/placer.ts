import type { PaperPoint } from "./displayList.ts";
import { openOccupied } from "./occupied.ts";
import { cornersOf, type OrientedBox } from "./orientedBox.ts";

/** Where a label may go and how good that is. */
export type Candidate = { readonly centre: PaperPoint; readonly turnRad: number; readonly cost: number };

type LabelRequest = {
  readonly width: number;
  readonly height: number;
  /** What the label speaks of; a label moved away is led back to it. */
  readonly anchor: PaperPoint;
  readonly candidates: readonly Candidate[];
  /** Where it is led to when none of those is free, before rings round its anchor are tried. */
  readonly far?: readonly Candidate[];
};

type PlacedLabel = {
  readonly box: OrientedBox;
  /** From the label to its anchor where it had to move away; null beside its anchor. */
  readonly leader: readonly [PaperPoint, PaperPoint] | null;
};

export type Placer = {
  /** Paper no label may cover: symbols, labels already there. */
  readonly block: (outline: readonly PaperPoint[]) => void;
  /** A line that labels rather keep off. */
  readonly line: (from: PaperPoint, to: PaperPoint, cost?: number) => void;
  /** Puts a label down and blocks its paper; null where the sheet has no room left for it. */
  readonly place: (request: LabelRequest) => PlacedLabel | null;
};

/** White left round every label, mm. */
const gapMm = 0.7;
/** A label this much worse than any of its own places is looked for in rings round the anchor. */
const ringStepMm = 3;
const lastRing = 26;

/**
 * Places labels one by one, best place first: the callers' order is their rank.
 *
 * @param boundsMm  left, bottom, right, top of the paper that labels may use
 */
export function openPlacer(boundsMm: readonly [number, number, number, number]): Placer {
  const taken = openOccupied<true>();
  const lines = openOccupied<number>();
  const [left, bottom, right, top] = boundsMm;

  const outlineOf = (box: OrientedBox) =>
    cornersOf({ ...box, width: box.width + 2 * gapMm, height: box.height + 2 * gapMm });
  const inside = (outline: readonly PaperPoint[]) =>
    outline.every(([x, y]) => x >= left && x <= right && y >= bottom && y <= top);

  const best = (request: LabelRequest, candidates: readonly Candidate[]): OrientedBox | null => {
    let found: OrientedBox | null = null;
    let lowest = Number.POSITIVE_INFINITY;
    for (const { centre, turnRad, cost } of candidates) {
      if (cost >= lowest) continue;
      const box = { centre, width: request.width, height: request.height, turnRad };
      const outline = outlineOf(box);
      if (!(inside(outline) && taken.isFree(outline))) continue;
      const total = cost + lines.touching(outline).reduce((sum, one) => sum + one, 0);
      if (total < lowest) [found, lowest] = [box, total];
    }
    return found;
  };

  return {
    block: (outline) => taken.add(outline, true),
    line: (from, to, cost = 1) => {
      for (const [a, b] of shortPieces(from, to)) lines.add([a, b], cost);
    },
    place(request) {
      const near = best(request, request.candidates);
      const box = near ?? best(request, request.far ?? []) ?? best(request, ringCandidates(request.anchor));
      if (!box) return null;
      taken.add(outlineOf(box), true);
      return { box, leader: near ? null : leaderFrom(box, request.anchor) };
    },
  };
}

function ringCandidates([x, y]: PaperPoint): readonly Candidate[] {
  return Array.from({ length: lastRing }, (_, ring) => {
    const radius = 6 + ring * ringStepMm;
    return Array.from({ length: 24 }, (__, step): Candidate => {
      const turn = (step * Math.PI) / 12;
      return { centre: [x + radius * Math.cos(turn), y + radius * Math.sin(turn)], turnRad: 0, cost: radius };
    });
  }).flat();
}

/** A line along an axis meets few cells; a long slanting one would fill the cells of its whole bounding box. */
function shortPieces(from: PaperPoint, to: PaperPoint): readonly (readonly [PaperPoint, PaperPoint])[] {
  const count = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 20));
  const at = (step: number): PaperPoint => [
    from[0] + ((to[0] - from[0]) * step) / count,
    from[1] + ((to[1] - from[1]) * step) / count,
  ];
  return Array.from({ length: count }, (_, step) => [at(step), at(step + 1)] as const);
}

function leaderFrom(box: OrientedBox, anchor: PaperPoint): readonly [PaperPoint, PaperPoint] {
  const clamp = (value: number, middle: number, half: number) =>
    Math.min(middle + half, Math.max(middle - half, value));
  const start: PaperPoint = [
    clamp(anchor[0], box.centre[0], box.width / 2),
    clamp(anchor[1], box.centre[1], box.height / 2),
  ];
  return [start, anchor];
}
