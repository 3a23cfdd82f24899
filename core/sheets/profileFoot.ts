import { furtherCases } from "../model/loadRows.ts";
import { spanClearance } from "../plant/spanClearance.ts";
import { catalogueBasis } from "../rules/rule.ts";
import type { Mark, PaperPoint } from "./displayList.ts";
import { wrapText } from "./fitText.ts";
import { scaleBar, scaleBarMm } from "./furniture.ts";
import { area, asParagraph, smallMm, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import { caseDashMm } from "./profileLines.ts";
import type { ProfileDesk } from "./profilePaper.ts";
import { isNarrow } from "./profileTable.ts";
import { caseNotes } from "./profileWords.ts";
import { limitSource } from "./sourceWords.ts";

const sampleMm = 9;
const leadMm = 3.6;
/** A scale bar with its figures, mm. */
const barUpMm = 5.6;

/** The key of the lines, both scales, and what is not on the sheet. */
export function profileFoot(desk: ProfileDesk): readonly Mark[] {
  const { plant, across, up } = desk;
  const { left, right, bottom } = desk.drawing;
  const times = Math.round((across.denominator / up.denominator) * 10) / 10;
  const barLeft = right - scaleBarMm(across, plant.settings().unitSystem);
  const scales = `across ${across.text}, up ${up.text}: heights ${times} times larger`;
  const scalesLeft = barLeft - 5 - textWidthMm(scales, "plain", smallMm);
  const narrow = isNarrow(desk.drawing);
  const notes = wrapText(notesOf(desk).join(" "), "plain", smallMm, (narrow ? right : scalesLeft - 4) - left);
  const notesBottom = bottom - 1 + (narrow ? barUpMm : 0);
  return [
    ...scaleBar([barLeft, bottom - 1], across, plant.settings().unitSystem),
    words(scales, [barLeft - 5, bottom - 1], { heightMm: smallMm, align: "right" }),
    ...asParagraph(
      notes.map((text, index) =>
        words(text, [left, notesBottom + (notes.length - 1 - index) * leadMm], { heightMm: smallMm, grey: 0.3 }),
      ),
    ),
    ...samples(desk, notesBottom + notes.length * leadMm + 0.6),
  ];
}

/** A piece of our line in every case the row shows, with its words; in two rows where one is too short. */
function samples({ plant, row, drawing }: ProfileDesk, bottom: number): readonly Mark[] {
  const notes = caseNotes(plant);
  const further = furtherCases.filter((one) => row.steps.some(({ span }) => span.line?.[one] !== undefined));
  const cases = ["stringing", "hot", "iced", "cold", ...further] as const;
  const widths = cases.map((one) => sampleMm + 1.5 + textWidthMm(notes[one], "plain", smallMm) + 6);
  const total = widths.reduce((sum, one) => sum + one, 0);
  const rowCount = Math.ceil(total / (drawing.right - drawing.left));
  let [x, y] = [drawing.left, bottom + (rowCount - 1) * leadMm];
  return cases.flatMap((one, index) => {
    const width = widths[index] ?? 0;
    if (x + width > drawing.right + 6) [x, y] = [drawing.left, y - leadMm];
    const at = y + smallMm / 2;
    const sample: readonly PaperPoint[] = [
      [x, at],
      [x + sampleMm, at],
    ];
    const marks = [
      area("cable", null, [...sample, [x + sampleMm, at - 0.9], [x, at - 0.9]], { fill: 0.86 }),
      stroke("strand", one === "stringing" ? "bold" : "thin", sample, { dashMm: caseDashMm[one] }),
      words(notes[one], [x + sampleMm + 1.5, y], { heightMm: smallMm }),
    ];
    x += width;
    return marks;
  });
}

function notesOf(desk: ProfileDesk): readonly string[] {
  const { plant, row, drawing } = desk;
  const isBeside = row.steps.some((step) => step.span.structures.some((one) => one.beside));
  const omitted = desk.omittedCount();
  const limits = row.steps.flatMap(({ span }) => spanClearance(plant, span.spanId)?.limit ?? []);
  const sources = [...new Set(limits.map((one) => limitSource(catalogueBasis(one))))];
  return [
    caseNotes(plant).source,
    "Dashed hairlines: wires of other parties at their measured sag, else at the sag the company assumes.",
    ...(isBeside ? ["Dotted ring: a level distance beside a building or sign, seen from its end."] : []),
    ...(isNarrow(drawing) && sources.length > 0 ? [`Limits: ${sources.join("; ")}.`] : []),
    ...(omitted > 0 ? [`${omitted} labels found no room.`] : []),
  ];
}
