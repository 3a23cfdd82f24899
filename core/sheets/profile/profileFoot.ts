import { furtherCases } from "../../model/loadRows.ts";
import type { Plant } from "../../plant/plant.ts";
import { spanClearance } from "../../plant/spanClearance.ts";
import { catalogueBasis } from "../../rules/rule.ts";
import { showsDesignedLine, struckLine } from "../asBuilt/designedLine.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { wrapText } from "../paper/fitText.ts";
import { scaleBar, scaleBarMm } from "../paper/furniture.ts";
import { area, asParagraph, smallMm, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import type { PaperBox } from "../paper/paper.ts";
import { limitSource } from "../sourceWords.ts";
import { caseDashMm } from "./profileLines.ts";
import type { ProfileDesk } from "./profilePaper.ts";
import { isNarrow } from "./profileTable.ts";
import { caseNotes } from "./profileWords.ts";

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

type Sample = { readonly text: string; readonly draw: (line: readonly [PaperPoint, PaperPoint]) => readonly Mark[] };

/** A piece of our line in every case the sheet shows, with its words, and of the designed one where it was built otherwise. */
function samplesOf(plant: Plant, desks: readonly ProfileDesk[]): readonly Sample[] {
  const notes = caseNotes(plant);
  const steps = desks.flatMap((desk) => desk.row.steps);
  const further = furtherCases.filter((one) => steps.some(({ span }) => span.line?.[one] !== undefined));
  const cases = (["stringing", "hot", "iced", "cold", ...further] as const).map(
    (one): Sample => ({
      text: notes[one],
      draw: ([from, to]) => [
        area("cable", null, [from, to, [to[0], to[1] - 0.9], [from[0], from[1] - 0.9]], { fill: 0.86 }),
        stroke("strand", one === "stringing" ? "bold" : "thin", [from, to], { dashMm: caseDashMm[one] }),
      ],
    }),
  );
  const isStruck = desks.some(showsDesignedLine);
  return isStruck ? [...cases, { text: "designed, and built otherwise", draw: struckLine }] : cases;
}

/** The samples side by side, in two rows where one is too short. */
function samples(plant: Plant, desks: readonly ProfileDesk[], drawing: PaperBox, bottom: number): readonly Mark[] {
  const { left, right } = drawing;
  const all = samplesOf(plant, desks);
  const widths = all.map(({ text }) => sampleMm + 1.5 + textWidthMm(text, "plain", smallMm) + 6);
  const rowCount = Math.ceil(widths.reduce((sum, one) => sum + one, 0) / (right - left));
  let [x, y] = [left, bottom + (rowCount - 1) * leadMm];
  return all.flatMap(({ text, draw }, index) => {
    const width = widths[index] ?? 0;
    if (x + width > right + 6) [x, y] = [left, y - leadMm];
    const at = y + smallMm / 2;
    const marks = [
      ...draw([
        [x, at],
        [x + sampleMm, at],
      ]),
      words(text, [x + sampleMm + 1.5, y], { heightMm: smallMm }),
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
    ...(desks.some((desk) => desk.designed) ? ["Struck figures were designed, those under them built."] : []),
    ...(isBeside ? ["Dotted ring: a level distance beside a building or sign, seen from its end."] : []),
    ...(isNarrow(drawing) && sources.length > 0 ? [`Limits: ${sources.join("; ")}.`] : []),
    ...(omitted > 0 ? [`${omitted} labels found no room.`] : []),
  ];
}
