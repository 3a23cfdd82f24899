import { terminalCautions } from "../cautions.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { wrapText } from "../paper/fitText.ts";
import type { Block } from "../paper/flow.ts";
import { asParagraph, bodyMm, rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import { panelHead, panelHeadMm, underHead } from "../paper/panel.ts";
import { type JobStep, type StepField, terminalTools } from "./terminalSteps.ts";

const indentMm = 5.5;
const lineMm = 3.85;
const gapMm = 1.3;
/** More over a step with fields, so that a hand with gloves can write in them: common practice, no source. */
const fieldGapMm = 1.4;
const tickMm = 2.6;
const fieldMm = 17;
const noteMm = 3.3;
const whiteMm = 3;
const readStyle = { face: "narrowBold", heightMm: bodyMm, align: "middle", layer: "tables" } as const;

type LaidStep = Pick<JobStep, "fields" | "isDone"> & { readonly lines: readonly string[] };

/** Steps one under the other, a box to tick before each, ticked where it is known to be done, and fields behind, then the tools. */
export function stepBlock(steps: readonly JobStep[], widthMm: number): Block {
  const laid = steps.map(({ text, fields, isDone }): LaidStep => {
    const lines = wrapText(text, "plain", bodyMm, widthMm - indentMm - fieldsMm(fields));
    return { lines, fields, isDone };
  });
  const tools = wrapText(terminalTools, "plain", smallMm, widthMm);
  const stepsMm = laid.reduce((sum, { lines, fields }) => sum + over(fields) + lines.length * lineMm + gapMm, 0);
  return {
    heightMm: panelHeadMm + stepsMm + tools.length * noteMm + whiteMm,
    draw(box) {
      const marks: Mark[] = [...panelHead("Steps", box)];
      let y = underHead(box).top - 2.4;
      for (const { lines, fields, isDone } of laid) {
        y -= over(fields);
        marks.push(rectangle("tables", "thin", [box.left, y - 0.3], tickMm, tickMm));
        if (isDone) marks.push(tickMark([box.left, y - 0.3]));
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

function over(fields: readonly StepField[]): number {
  return fields.length > 0 ? fieldGapMm : 0;
}

function fieldsMm(fields: readonly StepField[]): number {
  return fields.reduce((sum, { label }) => sum + textWidthMm(label, "plain", smallMm) + fieldMm + 3, 0);
}

/** A tick in a box whose lower left corner is told. */
function tickMark([left, bottom]: PaperPoint): Mark {
  return stroke("tables", "bold", [
    [left + 0.5, bottom + 1.3],
    [left + 1.1, bottom + 0.6],
    [left + tickMm - 0.4, bottom + tickMm - 0.3],
  ]);
}

/** Fields right of a step: what is measured, and a line to write it on, with what was read. */
function fieldMarks(fields: readonly StepField[], right: number, y: number): readonly Mark[] {
  let x = right;
  return [...fields].reverse().flatMap(({ label, read }) => {
    const end = x;
    x -= textWidthMm(label, "plain", smallMm) + fieldMm + 3;
    return [
      words(label, [end - fieldMm - 1, y], { heightMm: smallMm, align: "right", layer: "tables" }),
      stroke("tables", "thin", [
        [end - fieldMm, y - 0.6],
        [end, y - 0.6],
      ]),
      ...(read === "" ? [] : [words(read, [end - fieldMm / 2, y], readStyle)]),
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
