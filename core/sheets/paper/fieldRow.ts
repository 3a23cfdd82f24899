import type { Mark } from "./displayList.ts";
import { smallMm, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import type { PaperBox } from "./paper.ts";

/** Height of a row of fields, mm. */
export const fieldRowMm = 7;
const gapMm = 5;

/** Fields to write in, side by side across a box, each a line behind what goes there. */
export function fieldRow(fields: readonly string[], { left, right, bottom }: PaperBox): readonly Mark[] {
  const stepMm = (right - left + gapMm) / fields.length;
  return fields.flatMap((text, index) => {
    const x = left + index * stepMm;
    return [
      words(text, [x, bottom + 0.8], { heightMm: smallMm, layer: "tables" }),
      stroke("tables", "thin", [
        [x + textWidthMm(text, "plain", smallMm) + 1.5, bottom],
        [x + stepMm - gapMm, bottom],
      ]),
    ];
  });
}
