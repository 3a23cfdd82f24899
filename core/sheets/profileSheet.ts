import type { Plant } from "../plant/plant.ts";
import type { ProfileWay } from "../plant/profile.ts";
import type { Book, Draft, Drawn } from "./book.ts";
import type { Mark, SheetLink } from "./displayList.ts";
import { asFigure, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import { drawBelow } from "./profileBelow.ts";
import { profileFoot } from "./profileFoot.ts";
import { drawGrid, drawGround } from "./profileGround.ts";
import { drawOurLine } from "./profileLines.ts";
import { openProfileDesk, type ProfileDesk, tableBox } from "./profilePaper.ts";
import { drawBands, drawProfilePoles } from "./profilePoles.ts";
import type { ProfileRow, RowPaper } from "./profileRows.ts";
import { profileTable } from "./profileTable.ts";
import { drawOtherWires } from "./profileWires.ts";
import { stationText } from "./quantityText.ts";
import { type Changed, drawProfileClouds } from "./revised/profileClouds.ts";

/** One sheet with a piece of the line seen from the side, and its spans in figures. */
export function profileDraft(plant: Plant, row: ProfileRow, paper: RowPaper, changed: Changed): Draft {
  return {
    key: row.key,
    kind: "profile",
    title: `Profile, ${rowName(plant, row)}`,
    scale: "as noted",
    draw: (book) => drawProfile(plant, row, paper, changed, book),
  };
}

function rowName(plant: Plant, { way, startM, endM }: ProfileRow): string {
  const system = plant.settings().unitSystem;
  const what = way.table === "cable" ? "" : "bare strand ";
  return `${what}${plant.rowOf(way.table, way.id).name}, ${stationText(startM, system)} to ${stationText(endM, system)}`;
}

function drawProfile(plant: Plant, row: ProfileRow, paper: RowPaper, changed: Changed, book: Book): Drawn {
  const desk = openProfileDesk(plant, row, paper);
  const links: SheetLink[] = [];
  drawGrid(desk);
  drawGround(desk);
  drawBands(desk);
  drawProfilePoles(desk);
  drawOtherWires(desk);
  drawOurLine(desk);
  drawBelow(desk);
  drawProfileClouds(desk, changed);
  desk.drawWaitingLabels();
  return {
    marks: [
      ...asFigure(seenWords(plant, row), [...desk.marks(), ...head(desk, book, links)]),
      ...profileTable(plant, row.steps, tableBox(desk.drawing, row.steps.length)),
      ...profileFoot(desk),
    ],
    links,
  };
}

const headingMm = 2.6;

/** What is seen, and at both ends the sheets that go on. */
function head({ plant, row, chart, drawing }: ProfileDesk, book: Book, links: SheetLink[]): readonly Mark[] {
  const text = wayText(plant, row.way);
  const ends = [
    { key: row.before, align: "left", x: chart.left },
    { key: row.after, align: "right", x: chart.right },
  ] as const;
  return [
    words(text, [drawing.left, drawing.top - headingMm - 0.6], { face: "plainBold", heightMm: headingMm }),
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

/** What a profile shows, in words: the way and its poles; the spans' figures stand in the table. */
function seenWords(plant: Plant, { way, poles }: ProfileRow): string {
  return `${wayText(plant, way)}. Poles: ${poles.map((one) => plant.rowOf("pole", one.poleId).tag).join(", ")}.`;
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
