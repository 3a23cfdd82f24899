import { furtherCases } from "../model/loadRows.ts";
import type { Plant } from "../plant/plant.ts";
import { spanClearance } from "../plant/spanClearance.ts";
import { catalogueBasis } from "../rules/rule.ts";
import type { Mark, PaperPoint } from "./displayList.ts";
import { wrapText } from "./fitText.ts";
import { scaleBar, scaleBarMm } from "./furniture.ts";
import { area, asParagraph, smallMm, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import type { PaperBox } from "./paper.ts";
import { caseDashMm } from "./profileLines.ts";
import type { ProfileDesk } from "./profilePaper.ts";
import { isNarrow } from "./profileTable.ts";
import { caseNotes } from "./profileWords.ts";
import { limitSource } from "./sourceWords.ts";

const sampleMm = 9;
const leadMm = 3.6;
/** A scale bar with its figures, mm. */
const barUpMm = 5.6;

/** The key of the lines of a sheet, both scales, and what is not on it. */
export function profileFoot(plant: Plant, desks: readonly ProfileDesk[], drawing: PaperBox): readonly Mark[] {
  const [first] = desks;
  if (!first) return [];
  const { across, up } = first;
  const { left, right, bottom } = drawing;
  const times = Math.round((across.denominator / up.denominator) * 10) / 10;
  const barLeft = right - scaleBarMm(across, plant.settings().unitSystem);
  const scales = `across ${across.text}, up ${up.text}: heights ${times} times larger`;
  const scalesLeft = barLeft - 5 - textWidthMm(scales, "plain", smallMm);
  const narrow = isNarrow(drawing);
  const notes = wrapText(
    notesOf(plant, desks, drawing).join(" "),
    "plain",
    smallMm,
    (narrow ? right : scalesLeft - 4) - left,
  );
  const notesBottom = bottom - 1 + (narrow ? barUpMm : 0);
  return [
    ...scaleBar([barLeft, bottom - 1], across, plant.settings().unitSystem),
    words(scales, [barLeft - 5, bottom - 1], { heightMm: smallMm, align: "right" }),
    ...asParagraph(
      notes.map((text, index) =>
        words(text, [left, notesBottom + (notes.length - 1 - index) * leadMm], { heightMm: smallMm, grey: 0.3 }),
      ),
    ),
    ...samples(plant, desks, drawing, notesBottom + notes.length * leadMm + 0.6),
  ];
}

/** A piece of our line in every case the sheet shows, with its words; in two rows where one is too short. */
function samples(plant: Plant, desks: readonly ProfileDesk[], drawing: PaperBox, bottom: number): readonly Mark[] {
  const notes = caseNotes(plant);
  const steps = desks.flatMap((desk) => desk.row.steps);
  const further = furtherCases.filter((one) => steps.some(({ span }) => span.line?.[one] !== undefined));
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

function notesOf(plant: Plant, desks: readonly ProfileDesk[], drawing: PaperBox): readonly string[] {
  const steps = desks.flatMap((desk) => desk.row.steps);
  const isBeside = steps.some((step) => step.span.structures.some((one) => one.beside));
  const omitted = desks.reduce((sum, desk) => sum + desk.omittedCount(), 0);
  const limits = steps.flatMap(({ span }) => spanClearance(plant, span.spanId)?.limit ?? []);
  const sources = [...new Set(limits.map((one) => limitSource(catalogueBasis(one))))];
  return [
    caseNotes(plant).source,
    "Dashed hairlines: wires of other parties at their measured sag, else at the sag the company assumes.",
    ...(isBeside ? ["Dotted ring: a level distance beside a building or sign, seen from its end."] : []),
    ...(isNarrow(drawing) && sources.length > 0 ? [`Limits: ${sources.join("; ")}.`] : []),
    ...(omitted > 0 ? [`${omitted} labels found no room.`] : []),
  ];
}
