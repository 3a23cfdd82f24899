import { terminalCautions } from "../cautions.ts";
import type { Mark } from "../paper/displayList.ts";
import { wrapText } from "../paper/fitText.ts";
import type { Block } from "../paper/flow.ts";
import { asParagraph, bodyMm, rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import { panelHead, panelHeadMm, underHead } from "../paper/panel.ts";
import { type JobStep, terminalTools } from "./terminalSteps.ts";

const indentMm = 5.5;
const lineMm = 3.85;
const gapMm = 1.3;
/** More over a step with fields, so that a hand with gloves can write in them: common practice, no source. */
const fieldGapMm = 1.4;
const tickMm = 2.6;
const fieldMm = 17;
const noteMm = 3.3;
const whiteMm = 3;

type LaidStep = { readonly lines: readonly string[]; readonly fields: readonly string[] };

/** Steps one under the other, a box to tick before each and fields to write in behind, then the tools. */
export function stepBlock(steps: readonly JobStep[], widthMm: number): Block {
  const laid = steps.map(({ text, fields }): LaidStep => {
    const lines = wrapText(text, "plain", bodyMm, widthMm - indentMm - fieldsMm(fields));
    return { lines, fields };
  });
  const tools = wrapText(terminalTools, "plain", smallMm, widthMm);
  const stepsMm = laid.reduce((sum, { lines, fields }) => sum + over(fields) + lines.length * lineMm + gapMm, 0);
  return {
    heightMm: panelHeadMm + stepsMm + tools.length * noteMm + whiteMm,
    draw(box) {
      const marks: Mark[] = [...panelHead("Steps", box)];
      let y = underHead(box).top - 2.4;
      for (const { lines, fields } of laid) {
        y -= over(fields);
        marks.push(rectangle("tables", "thin", [box.left, y - 0.3], tickMm, tickMm));
        marks.push(...fieldMarks(fields, box.right, y));
        const top = y;
        marks.push(
          ...asParagraph(
            lines.map((text, index) => words(text, [box.left + indentMm, top - index * lineMm], { layer: "tables" })),
          ),
        );
        y -= lines.length * lineMm + gapMm;
      }
      return [
        ...marks,
        ...asParagraph(
          tools.map((text, index) =>
            words(text, [box.left, y - index * noteMm], { heightMm: smallMm, layer: "tables", grey: 0.2 }),
          ),
        ),
      ];
    },
  };
}

function over(fields: readonly string[]): number {
  return fields.length > 0 ? fieldGapMm : 0;
}

function fieldsMm(fields: readonly string[]): number {
  return fields.reduce((sum, text) => sum + textWidthMm(text, "plain", smallMm) + fieldMm + 3, 0);
}

/** Fields right of a step: what is measured, and a line to write it on. */
function fieldMarks(fields: readonly string[], right: number, y: number): readonly Mark[] {
  let x = right;
  return [...fields].reverse().flatMap((text) => {
    const end = x;
    x -= textWidthMm(text, "plain", smallMm) + fieldMm + 3;
    return [
      words(text, [end - fieldMm - 1, y], { heightMm: smallMm, align: "right", layer: "tables" }),
      stroke("tables", "thin", [
        [end - fieldMm, y - 0.6],
        [end, y - 0.6],
      ]),
    ];
  });
}

/** What the crew reads again before it climbs, in a frame. */
export function cautionBlock(widthMm: number): Block {
  const lines = wrapText(terminalCautions.join("  "), "plain", smallMm, widthMm - 8);
  const heightMm = 9.4 + lines.length * noteMm;
  return {
    heightMm: heightMm + whiteMm,
    draw: ({ left, right, top }) => [
      rectangle("tables", "medium", [left, top - heightMm + 1], right - left, heightMm - 1),
      words("Cautions", [left + 4, top - 4.4], { face: "plainBold", heightMm: bodyMm }),
      ...asParagraph(
        lines.map((text, index) => words(text, [left + 4, top - 8.4 - index * noteMm], { heightMm: smallMm })),
      ),
    ],
  };
}
