import type { Fill } from "./displayList.ts";

/** The twelve standard colours as ink; never shown without the colour's letters beside. */
const chips = [
  [0.1, 0.35, 0.75],
  [0.93, 0.5, 0.1],
  [0.15, 0.58, 0.25],
  [0.45, 0.28, 0.15],
  [0.47, 0.52, 0.56],
  [1, 1, 1],
  [0.8, 0.12, 0.14],
  [0.08, 0.08, 0.08],
  [0.95, 0.82, 0.1],
  [0.48, 0.25, 0.62],
  [0.93, 0.55, 0.66],
  [0.3, 0.76, 0.8],
] as const;

/**
 * Ink for the n-th colour of the code.
 *
 * @param position  from 1; the order starts again after twelve
 */
export function chipFill(position: number): Fill {
  return chips[(position - 1) % chips.length] ?? null;
}
