import { furtherCases } from "../model/loadRows.ts";
import type { Plant } from "../plant/plant.ts";
import type { ProfileWay } from "../plant/profile.ts";
import type { Book, Draft, Drawn } from "./book.ts";
import type { Mark, PaperPoint, SheetLink } from "./displayList.ts";
import { scaleBar } from "./furniture.ts";
import { area, smallMm, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import { drawingBox } from "./paper.ts";
import { drawBelow } from "./profileBelow.ts";
import { drawGrid, drawGround } from "./profileGround.ts";
import { caseDashMm, drawOurLine } from "./profileLines.ts";
import { openProfileDesk, type ProfileDesk, tableBox } from "./profilePaper.ts";
import { drawBands, drawProfilePoles } from "./profilePoles.ts";
import type { ProfileRow, RowPaper } from "./profileRows.ts";
import { profileTable } from "./profileTable.ts";
import { drawOtherWires } from "./profileWires.ts";
import { caseNotes } from "./profileWords.ts";
import { stationText } from "./quantityText.ts";

/** One sheet with a piece of the line seen from the side, and its spans in figures. */
export function profileDraft(plant: Plant, row: ProfileRow, paper: RowPaper): Draft {
  return {
    key: row.key,
    kind: "profile",
    title: `Profile, ${rowName(plant, row)}`,
    scale: "as noted",
    draw: (book) => drawProfile(plant, row, paper, book),
  };
}

function rowName(plant: Plant, { way, startM, endM }: ProfileRow): string {
  const system = plant.settings().unitSystem;
  const what = way.table === "cable" ? "" : "bare strand ";
  return `${what}${plant.rowOf(way.table, way.id).name}, ${stationText(startM, system)} to ${stationText(endM, system)}`;
}

function drawProfile(plant: Plant, row: ProfileRow, paper: RowPaper, book: Book): Drawn {
  const desk = openProfileDesk(plant, row, paper);
  const links: SheetLink[] = [];
  drawGrid(desk);
  drawGround(desk);
  drawBands(desk);
  drawProfilePoles(desk);
  drawOtherWires(desk);
  drawOurLine(desk);
  drawBelow(desk);
  desk.drawWaitingLabels();
  return {
    marks: [
      ...desk.marks(),
      ...head(desk, book, links),
      ...profileTable(plant, row.steps, tableBox(row.steps.length)),
      ...foot(desk),
    ],
    links,
  };
}

const headingMm = 2.6;

/** What is seen, and at both ends the sheets that go on. */
function head({ plant, row, chart }: ProfileDesk, book: Book, links: SheetLink[]): readonly Mark[] {
  const text = wayText(plant, row.way);
  const ends = [
    { key: row.before, align: "left", x: chart.left },
    { key: row.after, align: "right", x: chart.right },
  ] as const;
  return [
    words(text, [drawingBox.left, drawingBox.top - headingMm - 0.6], { face: "plainBold", heightMm: headingMm }),
    ...ends.flatMap(({ key, align, x }) => {
      const number = key === null ? undefined : book.numberOf(key);
      if (key === null || number === undefined) return [];
      const told = align === "left" ? `◂ from sheet ${number}` : `on sheet ${number} ▸`;
      const width = textWidthMm(told, "narrow", 2.2);
      const y = chart.top + 1.6;
      links.push({ boxMm: [align === "left" ? x : x - width, y - 1, width, 4], to: key });
      return [words(told, [x, y], { face: "narrow", heightMm: 2.2, align })];
    }),
  ];
}

/** What runs along a profile, as its heading says it. */
function wayText(plant: Plant, { table, id }: ProfileWay): string {
  if (table === "cable") {
    const { name, cableTypeId } = plant.rowOf(table, id);
    return `${name} from the side, in the direction of the light: ${plant.rowOf("cableType", cableTypeId).name}`;
  }
  const { name, strandTypeId } = plant.rowOf(table, id);
  return `Strand ${name} from the side, without a cable: ${plant.rowOf("strandType", strandTypeId).name}`;
}

/** The key of the lines, both scales, and what is not on the sheet. */
function foot(desk: ProfileDesk): readonly Mark[] {
  const { plant, row, across, up } = desk;
  const { left, right, bottom } = drawingBox;
  const notes = caseNotes(plant);
  const times = Math.round((across.denominator / up.denominator) * 10) / 10;
  const barLeft = right - 58;
  const marks: Mark[] = [
    ...scaleBar([barLeft, bottom - 1], across, plant.settings().unitSystem),
    words(`across ${across.text}, up ${up.text}: heights ${times} times larger`, [barLeft - 5, bottom - 1], {
      heightMm: smallMm,
      align: "right",
    }),
  ];
  let x = left;
  const further = furtherCases.filter((one) => row.steps.some(({ span }) => span.line?.[one] !== undefined));
  for (const one of ["stringing", "hot", "iced", "cold", ...further] as const) {
    const y = bottom + 3.2;
    const sample: readonly PaperPoint[] = [
      [x, y],
      [x + 9, y],
    ];
    const text = notes[one];
    marks.push(
      area("cable", null, [...sample, [x + 9, y - 0.9], [x, y - 0.9]], { fill: 0.86 }),
      stroke("strand", one === "stringing" ? "bold" : "thin", sample, { dashMm: caseDashMm[one] }),
      words(text, [x + 10.5, y - smallMm / 2], { heightMm: smallMm }),
    );
    x += 10.5 + textWidthMm(text, "plain", smallMm) + 6;
  }
  const lines = [
    notes.source,
    "Dashed hairlines: wires of other parties at their measured sag, else at the sag the company assumes.",
  ];
  if (row.steps.some((step) => step.span.structures.some((one) => one.beside)))
    lines.push("Dotted ring: a level distance beside a building or sign, seen from its end.");
  const omitted = desk.omittedCount();
  if (omitted > 0) lines.push(`${omitted} labels found no room.`);
  marks.push(words(lines.join(" "), [left, bottom - 1], { heightMm: smallMm, grey: 0.3 }));
  return marks;
}
