import { cablesInSpan } from "../../plant/cablePath.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Book, Draft, Drawn, NumberedFinding } from "../book.ts";
import type { Mark, SheetLink } from "../paper/displayList.ts";
import { shortenText } from "../paper/fitText.ts";
import { northArrow, scaleBar, scaleBarMm } from "../paper/furniture.ts";
import { asFigure, rectangle, smallMm, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import type { Paper, PaperBox } from "../paper/paper.ts";
import { shelfLines } from "../paper/shelfLines.ts";
import type { PlacedChange } from "../revised/changePlaces.ts";
import { drawClouds } from "../revised/planClouds.ts";
import { drawGroundNotes, drawGuys, drawStructures } from "./planBeside.ts";
import { drawBonds } from "./planBonds.ts";
import { drawBranches } from "./planBranches.ts";
import { drawCallOut } from "./planCallOut.ts";
import { drawCrossings } from "./planCrossings.ts";
import { openPlanDesk, type PlanDesk } from "./planDesk.ts";
import { drawFindings } from "./planFindings.ts";
import { drawHung } from "./planHung.ts";
import { drawLine, drawPoles, drawSpanLengths } from "./planLine.ts";
import { drawMatchLines } from "./planMatchLines.ts";
import type { PlanRow } from "./planRows.ts";
import { drawUnits } from "./planUnits.ts";
import { stripWords } from "./planWords.ts";
import { type Stretch, stretchTitle } from "./stretchTitle.ts";
import { betweenMm } from "./stripScale.ts";
import type { Strip } from "./strips.ts";

/** What the strips are drawn on: the drawing space without the row of the scale bar. */
export function stripBoxOf({ drawing }: Paper): PaperBox {
  return { ...drawing, bottom: drawing.bottom + 8 };
}

/** What the strips of one set know of each other. */
export type StripContext = {
  /** Open findings by the key of the strip nearest to them. */
  readonly byStrip: ReadonlyMap<string, readonly NumberedFinding[]>;
  /** What changed since the revision before, by the key of the strip nearest to it, and the letter its clouds are marked with. */
  readonly changed: ReadonlyMap<string, readonly PlacedChange[]>;
  readonly cloudLetter: string;
  /** The design, where the plan is drawn as built: what differs is struck, what was built stands beside it. */
  readonly designed: Plant | null;
  /** Poles where the strand is bonded. */
  readonly bonded: ReadonlySet<string>;
  /** Key of the strip that shows a span. */
  readonly stripOfSpan: ReadonlyMap<string, string>;
  /** Key of the profile that shows a span. */
  readonly profileOfSpan: ReadonlyMap<string, string>;
};

/** One sheet of the strand plan, with one strip or several. */
export function planDraft(plant: Plant, paper: Paper, rows: readonly PlanRow[], context: StripContext): Draft {
  const [key = "", ...otherKeys] = rows.map((row) => row.strip.key);
  return {
    key,
    otherKeys,
    kind: "plan",
    ...stretchTitle(
      "Strand plan",
      rows.map((row) => stretchOf(plant, row.strip)),
      plant.settings().unitSystem,
    ),
    scale: rows[0]?.strip.view.scale.text ?? "",
    draw: (book) => drawPlan(plant, paper, rows, context, book),
  };
}

function stretchOf(plant: Plant, { cableId, startM, endM }: Strip): Stretch {
  return { name: cableId === null ? "poles without cable" : plant.rowOf("cable", cableId).name, startM, endM };
}

function drawPlan(plant: Plant, paper: Paper, rows: readonly PlanRow[], context: StripContext, book: Book): Drawn {
  const links: SheetLink[] = [];
  const desks = rows.map((row) => drawStrip(plant, row, context, book, links));
  const omittedCount = desks.reduce((sum, desk) => sum + desk.omittedCount(), 0);
  return {
    marks: [
      ...desks.flatMap((desk) => asFigure(stripWords(desk), desk.marks())),
      ...shelfLines(
        rows.map((row) => row.box),
        stripBoxOf(paper),
        betweenMm,
      ),
      ...foot(plant, paper.drawing, rows, omittedCount),
    ],
    links,
  };
}

function drawStrip(
  plant: Plant,
  { strip, box }: PlanRow,
  context: StripContext,
  book: Book,
  links: SheetLink[],
): PlanDesk {
  const desk = openPlanDesk(plant, strip, box, context.designed);
  const heads = drawHeading(desk, profilesOf(strip, context, book), links);
  drawLine(desk);
  drawMatchLines(desk, book, links);
  drawPoles(desk);
  drawGuys(desk);
  drawStructures(desk);
  drawHung(desk, book, links);
  drawBonds(desk, context.bonded);
  drawBranches(desk, context.stripOfSpan, book);
  drawUnits(desk, heads);
  drawCrossings(desk);
  drawGroundNotes(desk);
  drawSpanLengths(desk);
  drawClouds(desk, context.changed.get(strip.key) ?? [], context.cloudLetter);
  desk.drawWaitingLabels();
  drawCallOut(desk);
  drawFindings(desk, context.byStrip.get(strip.key) ?? []);
  return desk;
}

const headingMm = 2.6;
/** Side of the square that the north arrow takes, mm. */
const northMm = 18;

type SeenFrom = { readonly key: string; readonly number: string };

/** The profiles in the set that show a strip's spans. */
function profilesOf(strip: Strip, { profileOfSpan }: StripContext, book: Book): readonly SeenFrom[] {
  const keys = [...new Set(strip.steps.flatMap((step) => profileOfSpan.get(step.spanId) ?? []))];
  const seen = new Map<string, SeenFrom>();
  for (const key of keys) {
    const number = book.numberOf(key);
    if (number !== undefined && !seen.has(number)) seen.set(number, { key, number });
  }
  return [...seen.values()];
}

/** What is lashed and on what, at the strip's upper left, and its north at the upper right; answers with the paper they take. */
function drawHeading(desk: PlanDesk, profiles: readonly SeenFrom[], links: SheetLink[]): readonly PaperBox[] {
  const { plant, strip, box } = desk;
  const lines = headingText(plant, strip);
  const [first] = profiles;
  const numbers = profiles.map((one) => one.number).join(", ");
  const seen = `   ·   from the side: ${profiles.length > 1 ? "sheets" : "sheet"} ${numbers}`;
  const text = shortenText(first ? lines + seen : lines, "plainBold", headingMm, box.right - box.left - northMm - 2);
  const width = textWidthMm(text, "plainBold", headingMm);
  const y = box.top - headingMm - 0.6;
  // a line that must pass here passes under the words
  const white = rectangle("text", null, [box.left, y - 0.9], width, headingMm + 1.5, { fill: 1 });
  desk.draw([white, words(text, [box.left, y], { face: "plainBold", heightMm: headingMm })]);
  if (first) {
    const before = textWidthMm(lines, "plainBold", headingMm);
    if (width > before) links.push({ boxMm: [box.left + before, y - 1, width - before, headingMm + 2], to: first.key });
  }
  desk.draw(northArrow([box.right - 8, box.top - 8.5], strip.view.turnRad));
  const heads: readonly PaperBox[] = [
    { ...box, right: box.left + width, bottom: y - 1 },
    { ...box, left: box.right - northMm, bottom: box.top - northMm - 0.5 },
  ];
  for (const { left, right, bottom, top } of heads)
    desk.placer.block(rectangle("frame", null, [left, bottom], right - left, top - bottom).pointsMm);
  return heads;
}

function headingText(plant: Plant, strip: Strip): string {
  const cables = [...new Set(strip.steps.flatMap((step) => cablesInSpan(plant, step.spanId)))].sort();
  const strands = new Set(
    strip.steps.flatMap((step) => {
      const section = plant.rowOf("span", step.spanId).strandSectionId;
      return section === null
        ? []
        : [plant.rowOf("strandType", plant.rowOf("strandSection", section).strandTypeId).name];
    }),
  );
  const cableWords = cables.map((id) => {
    const cable = plant.rowOf("cable", id);
    return `${cable.name}: ${plant.rowOf("cableType", cable.cableTypeId).name}`;
  });
  const strandWords = strands.size === 0 ? "no strand yet" : `strand ${[...strands].sort().join(", ")}`;
  return [...(cableWords.length === 0 ? ["no cable yet"] : cableWords), strandWords].join("   ·   ");
}

function foot(
  plant: Plant,
  { left, right, bottom }: PaperBox,
  rows: readonly PlanRow[],
  omittedCount: number,
): readonly Mark[] {
  const scale = rows[0]?.strip.view.scale;
  if (!scale) return [];
  const notes = [
    "Terminals, coils and houses are drawn larger than scale; a terminal's hangers stand at its true place.",
    ...(omittedCount > 0 ? [`${omittedCount} labels found no room on this sheet; the schedules have them.`] : []),
  ];
  const system = plant.settings().unitSystem;
  const barLeft = right - scaleBarMm(scale, system);
  return [
    ...scaleBar([barLeft, bottom - 1], scale, system),
    words(scale.text, [barLeft - 4, bottom - 1], { face: "plain", heightMm: smallMm, align: "right" }),
    ...notes.map((text, index) => words(text, [left, bottom - 1 + index * 3.3], { heightMm: smallMm, grey: 0.3 })),
  ];
}
