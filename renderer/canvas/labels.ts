import { blockSymbols } from "./blockSymbols.ts";
import { openLabelGrid } from "./labelGrid.ts";
import { type LabelWish, labelWishes, type Measure } from "./labelWishes.ts";
import type { Picture } from "./paint.ts";

/** A label that found room: its middle on screen. */
export type PlacedLabel = Omit<LabelWish, "places"> & { readonly x: number; readonly y: number };

/**
 * Lettering of a view, laid so that no label lies on another or on a symbol, and on a hairline only where there is no other
 * place; what finds no room is left out until one zooms in.
 */
export function layOutLabels(picture: Picture, measure: Measure): readonly PlacedLabel[] {
  const grid = openLabelGrid();
  blockSymbols(picture, grid);
  const placed: PlacedLabel[] = [];
  for (const { places, ...label } of labelWishes(picture, measure)) {
    const plate = {
      widthPx: measure(label.text, label.sizePx, label.weight) + 2,
      heightPx: label.sizePx - 1,
      turnRad: label.turnRad,
    };
    const free =
      places.find(([x, y]) => grid.take({ ...plate, x, y }, true)) ??
      places.find(([x, y]) => grid.take({ ...plate, x, y }, false));
    if (free) placed.push({ ...label, x: free[0], y: free[1] });
  }
  return placed;
}
