import type { Layer, Mark, PaperPoint } from "./displayList.ts";
import { circle, stroke } from "./marks.ts";
import { poleRingMm } from "./symbols.ts";

/** A nail driven in from above, as on the diagram: what is pinned stays. Height over its foot and radius of its head, mm. */
export const nailMm = { height: 2.6, head: 0.75 } as const;

/** A nail by its foot, beside or on what people pinned. */
export function nailSymbol(layer: Layer, [x, y]: PaperPoint): readonly Mark[] {
  const head: PaperPoint = [x, y + nailMm.height - nailMm.head];
  return [stroke(layer, "bold", [[x, y], head]), circle(layer, null, head, nailMm.head, 0)];
}

const slashMm = poleRingMm + 1.5;

/** A slash through a pole's ring: people let no terminal hang beside it. */
export function closedPoleStroke([x, y]: PaperPoint): Mark {
  return stroke("poles", "thick", [
    [x - slashMm, y - slashMm * 0.8],
    [x + slashMm, y + slashMm * 0.8],
  ]);
}
