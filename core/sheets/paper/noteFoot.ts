import type { Mark } from "./displayList.ts";
import { wrapText } from "./fitText.ts";
import { smallMm, words } from "./marks.ts";
import type { PaperBox } from "./paper.ts";
import type { Part } from "./part.ts";

const leadMm = 3.6;
const whiteMm = 4.4;

/** Small notes along the foot of a drawing space, each wrapped to its width, and the space that is left over them. */
export function noteFoot(
  notes: readonly string[],
  drawing: PaperBox,
): { readonly marks: readonly Mark[]; readonly rest: PaperBox } {
  const lines = notes.flatMap((note) => {
    const part: Part = { as: "paragraph" };
    return wrapText(note, "plain", smallMm, drawing.right - drawing.left).map((text) => ({ text, part }));
  });
  const marks = lines.map(({ text, part }, index) => {
    const y = drawing.bottom + (lines.length - 1 - index) * leadMm;
    return words(text, [drawing.left, y], { heightMm: smallMm, grey: 0.2, part });
  });
  return { marks, rest: { ...drawing, bottom: drawing.bottom + lines.length * leadMm + whiteMm } };
}
