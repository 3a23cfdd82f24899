/** A cable as fibers are given out of it. */
export type TubedCable = {
  readonly fiberCount: number;
  /** Fibers of a tube; the last one may have fewer. */
  readonly fibersPerTube: number;
  /** Last fibers of each tube that stay free. */
  readonly spareCount: number;
  /** Fibers in use or kept already. */
  readonly taken: ReadonlySet<number>;
};

/** Buffer tube of a fiber, both from 1. */
export function tubeOfFiber(fiber: number, fibersPerTube: number): number {
  return Math.ceil(fiber / fibersPerTube);
}

/** Fibers that may be given out, tube by tube, ascending; neither spares nor taken ones. */
export function freeByTube({ fiberCount, fibersPerTube, spareCount, taken }: TubedCable): number[][] {
  return Array.from({ length: Math.ceil(fiberCount / fibersPerTube) }, (_, index) => {
    const first = index * fibersPerTube + 1;
    const size = Math.min(fibersPerTube, fiberCount - first + 1) - spareCount;
    return Array.from({ length: Math.max(0, size) }, (_unused, place) => first + place).filter(
      (one) => !taken.has(one),
    );
  });
}
