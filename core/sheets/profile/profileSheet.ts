import type { Plant } from "../../plant/plant.ts";
import type { ProfileStep, ProfileWay } from "../../plant/profile.ts";
import { drawDesignedLine } from "../asBuilt/designedLine.ts";
import type { Book, Draft, Drawn } from "../book.ts";
import type { Mark, SheetLink } from "../paper/displayList.ts";
import { shortenText } from "../paper/fitText.ts";
import { asFigure, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import { shelfLines } from "../paper/shelfLines.ts";
import { type Shelved, shelved } from "../paper/shelves.ts";
import { stretchTitle } from "../plan/stretchTitle.ts";
import { type Changed, drawProfileClouds } from "../revised/profileClouds.ts";
import { kindAndName } from "../tradeWords.ts";
import { drawBelow } from "./profileBelow.ts";
import { profileFoot } from "./profileFoot.ts";
import { drawGrid, drawGround } from "./profileGround.ts";
import { drawOurLine } from "./profileLines.ts";
import { openProfileDesk, type ProfileDesk, profileBox, profileNeed, tableBox } from "./profilePaper.ts";
import { drawBands, drawProfilePoles } from "./profilePoles.ts";
import type { ProfileRow, RowPaper } from "./profileRows.ts";
import { profileTable } from "./profileTable.ts";
import { drawOtherWires } from "./profileWires.ts";

type Part = Shelved<ProfileRow>;

/** White between two profiles of a sheet, mm. */
const betweenMm = 6;

/** The line seen from the side, piece after piece; short pieces share a sheet, and the table of their spans. */
export function profileDrafts(
  plant: Plant,
  rows: readonly ProfileRow[],
  paper: RowPaper,
  changed: Changed,
): readonly Draft[] {
  const needs = rows.map((row) => profileNeed(row, paper));
  return shelved(needs, (some) => profileBox(paper, spansOf(some).length), betweenMm).map((parts) =>
    profileDraft(plant, parts, paper, changed),
  );
}

function spansOf(rows: readonly ProfileRow[]): readonly ProfileStep[] {
  return rows.flatMap((row) => row.steps);
}

function profileDraft(plant: Plant, parts: readonly Part[], paper: RowPaper, changed: Changed): Draft {
  const [key = "", ...otherKeys] = parts.map((one) => one.thing.key);
  const stretches = parts.map(({ thing }) => ({ ...thing, name: wayName(plant, thing) }));
  return {
    key,
    otherKeys,
    kind: "profile",
    ...stretchTitle("Profile", stretches, plant.settings().unitSystem),
    scale: "as noted",
    draw: (book) => drawSheet(plant, parts, paper, changed, book),
  };
}

function wayName(plant: Plant, { way }: ProfileRow): string {
  return `${way.table === "cable" ? "" : "bare strand "}${plant.rowOf(way.table, way.id).name}`;
}

function drawSheet(plant: Plant, parts: readonly Part[], paper: RowPaper, changed: Changed, book: Book): Drawn {
  const links: SheetLink[] = [];
  const desks = parts.map(({ thing, box }) => openProfileDesk(plant, thing, paper, box, changed.designed));
  const profiles = desks.map((desk) => drawProfile(desk, changed, book, links));
  const spans = spansOf(parts.map((one) => one.thing));
  const boxes = parts.map((one) => one.box);
  return {
    marks: [
      ...profiles.flat(),
      ...shelfLines(boxes, profileBox(paper, spans.length), betweenMm),
      ...profileTable(plant, changed.designed, spans, tableBox(paper, spans.length)),
      ...profileFoot(plant, desks, paper.drawing),
    ],
    links,
  };
}

function drawProfile(desk: ProfileDesk, changed: Changed, book: Book, links: SheetLink[]): readonly Mark[] {
  drawGrid(desk);
  drawGround(desk);
  drawBands(desk);
  drawProfilePoles(desk);
  drawOtherWires(desk);
  drawOurLine(desk);
  drawDesignedLine(desk);
  drawBelow(desk);
  drawProfileClouds(desk, changed);
  desk.drawWaitingLabels();
  return asFigure(seenWords(desk.plant, desk.row), [...desk.marks(), ...head(desk, book, links)]);
}

const headingMm = 2.6;

/** What is seen, and at both ends the sheets that go on. */
function head({ plant, row, chart, part }: ProfileDesk, book: Book, links: SheetLink[]): readonly Mark[] {
  const text = wayText(plant, row.way);
  const ends = [
    { key: row.before, align: "left", x: chart.left },
    { key: row.after, align: "right", x: chart.right },
  ] as const;
  return [
    words(shortenText(text, "plainBold", headingMm, part.right - part.left), [part.left, part.top - headingMm - 0.6], {
      face: "plainBold",
      heightMm: headingMm,
    }),
    ...ends.flatMap(({ key, align, x }) => {
      const number = key === null ? undefined : book.numberOf(key);
      if (key === null || number === undefined) return [];
      const isHere = number === book.numberOf(row.key);
      const told =
        align === "left"
          ? `◂ from ${isHere ? "above" : `sheet ${number}`}`
          : `on ${isHere ? "below" : `sheet ${number}`} ▸`;
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
  return `${kindAndName("Strand", name)} from the side, without a cable: ${plant.rowOf("strandType", strandTypeId).name}`;
}
