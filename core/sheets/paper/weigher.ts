import { type LineMeaning, lineWeightsMm } from "../../model/lineWeights.ts";
import type { Settings } from "../../model/tables.ts";
import type { Layer, Mark, Pen } from "./displayList.ts";

/** What the lines of each layer are, so that one choice weighs them alike. */
const meanings: Readonly<Record<Layer, LineMeaning>> = {
  watermark: "markLineMm",
  ground: "existingLineMm",
  crossings: "existingLineMm",
  others: "existingLineMm",
  drops: "newLineMm",
  units: "existingLineMm",
  cable: "newLineMm",
  strand: "newLineMm",
  slack: "newLineMm",
  terminals: "newLineMm",
  poles: "existingLineMm",
  dimensions: "dimensionLineMm",
  findings: "markLineMm",
  revisions: "markLineMm",
  frame: "frameLineMm",
  tables: "frameLineMm",
  text: "frameLineMm",
};

/** From the finest to the heaviest. */
const series: readonly Pen[] = ["fine", "thin", "medium", "bold", "thick", "heavy"];
/** Where the usual weight stands among those a meaning may have. */
const usualAt = 1;

/** Draws marks with pens as much lighter or heavier as the company wants lines of their meaning; nothing gets lighter than the finest pen. */
export function weigher(settings: Pick<Settings, LineMeaning>): (mark: Mark) => Mark {
  const steps = new Map<Layer, number>();
  for (const [layer, meaning] of Object.entries(meanings)) {
    const choices: readonly string[] = lineWeightsMm[meaning];
    steps.set(layer as Layer, choices.indexOf(settings[meaning]) - usualAt); // the keys of meanings
  }
  return (mark) => {
    const step = steps.get(mark.layer) ?? 0;
    if (step === 0 || !("pen" in mark) || mark.pen === null) return mark;
    const at = Math.min(series.length - 1, Math.max(0, series.indexOf(mark.pen) + step));
    return { ...mark, pen: series[at] ?? mark.pen };
  };
}
