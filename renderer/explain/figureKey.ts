import type { FigureRef } from "../../core/explain/explanation.ts";

/** One text for one figure, so that a figure is pinned once. */
export function figureKey(ref: FigureRef): string {
  return [
    ref.figure,
    ref.id,
    "part" in ref ? ref.part : "",
    "wireId" in ref ? ref.wireId : "",
    "bound" in ref ? ref.bound : "",
    "plan" in ref ? ref.plan : "",
  ].join(" ");
}
