import { colourAt } from "../../fiber/colourCode.ts";
import type { Plant } from "../../plant/plant.ts";
import { numberRanges } from "../jobCard/terminalFacts.ts";
import { chipFill } from "../paper/chipColours.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { shortenText } from "../paper/fitText.ts";
import { circle, rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import type { PaperBox } from "../paper/paper.ts";
import { stationText } from "../paper/quantityText.ts";
import type { ChartFiber, ChartPage } from "./fiberChartRows.ts";

/** Paper over the first fiber: for the heading alone, and for places' names that stand upright over the chart. */
export const chartHeadMm = { alone: 12, places: 31 } as const;
const headingMm = 2.6;
const tubeMm = 34;
const fiberMm = 20;
const useMm = 78;
const tubeGapMm = 1.8;
const widestRowMm = 5.2;
/** Paper of a chart that is told in one line. */
const lineMm = 5.2;

function isDark({ fibers }: ChartPage): boolean {
  return fibers.every((one) => one.uses.length === 0);
}

function headOf({ places }: ChartPage): number {
  return places.length > 0 ? chartHeadMm.places : chartHeadMm.alone;
}

/** Paper that a chart takes with its rows as wide as they may be. */
export function chartHeightMm(page: ChartPage): number {
  if (isDark(page)) return lineMm;
  const tubeCount = new Set(page.fibers.map((one) => one.tube)).size;
  return headOf(page) + page.fibers.length * widestRowMm + (tubeCount - 1) * tubeGapMm;
}

/** Where the parts of a chart lie on the sheet. */
type ChartPaper = {
  readonly box: PaperBox;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly rowMm: number;
  readonly x: ReadonlyMap<string, number>;
  readonly y: (fiber: ChartFiber) => number;
};

function paperOf(box: PaperBox, page: ChartPage): ChartPaper {
  const { fibers, places } = page;
  const [left, right] = [box.left + tubeMm + fiberMm, box.right - useMm];
  const top = box.top - headOf(page);
  const firstTube = fibers[0]?.tube ?? 1;
  const tubeCount = new Set(fibers.map((one) => one.tube)).size;
  const room = top - box.bottom - (tubeCount - 1) * tubeGapMm;
  const rowMm = Math.min(widestRowMm, room / Math.max(1, fibers.length));
  const stepMm = (right - left) / (places.length + 1);
  return {
    box,
    left,
    right,
    top,
    rowMm,
    x: new Map(places.map((one, index) => [one.key, left + (index + 1) * stepMm])),
    y: (fiber) => top - (fibers.indexOf(fiber) + 0.5) * rowMm - (fiber.tube - firstTube) * tubeGapMm,
  };
}

/** A chart at the top of a box; rows are narrower where the box is lower than the chart would have it. */
export function drawChart(plant: Plant, box: PaperBox, cableId: string, page: ChartPage): readonly Mark[] {
  if (isDark(page)) return darkLine(plant, box, cableId, page);
  const paper = paperOf(box, page);
  return [
    ...head(plant, cableId, page, paper),
    ...tubeMarks(page, paper),
    ...page.fibers.flatMap((fiber) => fiberMarks(fiber, paper)),
  ];
}

/** Fibers of which nothing is used, in one line. */
function darkLine(plant: Plant, box: PaperBox, cableId: string, { fibers }: ChartPage): readonly Mark[] {
  const which = `${fibers.length === 1 ? "Fiber" : "Fibers"} ${numberRanges(fibers.map((one) => one.fiber))}`;
  return [
    words(`${cableWords(plant, cableId)}. ${which}: spare`, [box.left, box.top - headingMm - 0.6], {
      face: "plainBold",
      heightMm: headingMm,
    }),
    stroke("tables", "fine", [
      [box.left, box.bottom],
      [box.right, box.bottom],
    ]),
  ];
}

function cableWords(plant: Plant, cableId: string): string {
  const { name, cableTypeId } = plant.rowOf("cable", cableId);
  return `${name}: ${plant.rowOf("cableType", cableTypeId).name}`;
}

/** What the chart shows, in words: what each fiber does. */
export function chartWords({ fibers }: ChartPage): string {
  const used = fibers.filter((one) => one.uses.length > 0);
  const each = used.map((one) => `Fiber ${one.fiber}: ${one.uses.map((use) => use.text).join("; ")}.`);
  return [...each, used.length < fibers.length ? "All other fibers are spare." : ""]
    .filter((one) => one !== "")
    .join(" ");
}

/** The cable's name, and every place where fibers leave it, with its station, over a line down the chart. */
function head(plant: Plant, cableId: string, { fibers, places }: ChartPage, paper: ChartPaper): readonly Mark[] {
  const used = fibers.filter((one) => one.uses.length > 0).length;
  const text = `${cableWords(plant, cableId)}. ${used} of the ${fibers.length} fibers here used`;
  const last = fibers.at(-1);
  const bottom = last ? paper.y(last) - paper.rowMm / 2 : paper.top;
  const system = plant.settings().unitSystem;
  return [
    words(text, [paper.box.left, paper.box.top - headingMm - 0.6], { face: "plainBold", heightMm: headingMm }),
    words("feed end", [paper.left, paper.top + 1.6], { face: "narrow", heightMm: smallMm, align: "right", grey: 0.35 }),
    ...places.flatMap(({ key: place, name, stationM }) => {
      const x = paper.x.get(place) ?? paper.left;
      const told = shortenText(`${name}  ${stationText(stationM, system)}`, "narrow", 2.1, chartHeadMm.places - 9);
      const line: readonly PaperPoint[] = [
        [x, bottom],
        [x, paper.top + 1],
      ];
      return [
        stroke("tables", "fine", line, { dashMm: [0.3, 1.1] }),
        words(told, [x + 0.75, paper.top + 2], { face: "narrow", heightMm: 2.1, turnRad: Math.PI / 2 }),
      ];
    }),
  ];
}

/** Each tube as a bar in its colour beside its fibers. */
function tubeMarks({ fibers }: ChartPage, { box, y, rowMm }: ChartPaper): readonly Mark[] {
  return [...new Set(fibers.map((one) => one.tube))].flatMap((tube) => {
    const own = fibers.filter((one) => one.tube === tube);
    const [first, last] = [own[0], own.at(-1)];
    if (!(first && last)) return [];
    const [top, bottom] = [y(first) + rowMm / 2, y(last) - rowMm / 2];
    const middle = (top + bottom) / 2;
    const { name, abbreviation } = colourAt(tube);
    return [
      rectangle("tables", "thin", [box.left + tubeMm - 6, bottom + 0.3], 3.4, top - bottom - 0.6, {
        fill: chipFill(tube),
      }),
      words(`Tube ${tube}`, [box.left, middle + 0.8], { face: "plainBold", layer: "tables" }),
      words(shortenText(`${name} ${abbreviation}`, "plain", smallMm, tubeMm - 8), [box.left, middle - 2.8], {
        heightMm: smallMm,
        layer: "tables",
      }),
    ];
  });
}

const dotMm = 0.95;

/** One fiber: number, colour, a line to where it ends and what it does there. */
function fiberMarks(fiber: ChartFiber, { left, right, x, y }: ChartPaper): readonly Mark[] {
  const at = y(fiber);
  const base = at - smallMm / 2;
  const chipLeft = left - 11.5;
  const ends = fiber.uses.flatMap((one) => {
    const end = one.placeKey === null ? undefined : x.get(one.placeKey);
    return end === undefined ? [] : [{ ...one, end }];
  });
  const farthest = ends.length > 0 ? Math.max(...ends.map((one) => one.end)) : left;
  const isHeld = fiber.uses.some((one) => one.purpose === "reserved");
  const told = fiber.uses.map((one) => one.text).join("; ");
  return [
    words(String(fiber.fiber), [left - 13.5, base], { heightMm: smallMm, align: "right", layer: "tables" }),
    rectangle("tables", "fine", [chipLeft, at - 0.95], 4, 1.9, { fill: chipFill(fiber.place) }),
    words(colourAt(fiber.place).abbreviation, [chipLeft + 5, base], {
      face: "narrow",
      heightMm: smallMm,
      layer: "tables",
    }),
    ...(farthest > left ? [line(left, farthest, at, true)] : []),
    line(farthest, right, at, false, farthest > left || isHeld),
    ...ends.flatMap((one) => endMark(one.purpose, [one.end, at])),
    words(shortenText(told === "" ? "spare" : told, "narrow", smallMm, useMm - 3), [right + 3, base], {
      face: "narrow",
      heightMm: smallMm,
      layer: "tables",
      grey: told === "" ? 0.4 : 0,
    }),
  ];
}

function line(from: number, to: number, y: number, isUsed: boolean, isDark = false): Mark {
  const points: readonly PaperPoint[] = [
    [from, y],
    [to, y],
  ];
  return stroke("cable", isUsed ? "bold" : "fine", points, { dashMm: isDark ? [0.8, 1.2] : [] });
}

/** What happens to a fiber where it leaves the cable: cut to a splitter, spliced through, or broken. */
function endMark(purpose: ChartFiber["uses"][number]["purpose"], [x, y]: PaperPoint): readonly Mark[] {
  switch (purpose) {
    case "terminal":
      return [circle("terminals", null, [x, y], dotMm, 0)];
    case "lateral":
      return [rectangle("terminals", "bold", [x - dotMm, y - dotMm], 2 * dotMm, 2 * dotMm, { fill: 1 })];
    case "dead":
      return [-1, 1].map((side) =>
        stroke("terminals", "bold", [
          [x - dotMm, y - side * dotMm],
          [x + dotMm, y + side * dotMm],
        ]),
      );
    case "reserved":
      return [];
  }
}

/** What the marks mean, at the foot of a sheet. */
export function chartLegend({ left, bottom }: PaperBox): readonly Mark[] {
  const y = bottom + 1;
  const entries: readonly (readonly [text: string, draw: (at: PaperPoint) => readonly Mark[]])[] = [
    ["cut and spliced to a splitter", (at) => endMark("terminal", at)],
    ["spliced through to another cable", (at) => endMark("lateral", at)],
    ["dead from here on", (at) => endMark("dead", at)],
    ["dark beyond the cut, or held", ([x]) => [line(x - 4, x + 1.5, y, false, true)]],
    ["in use, from the feed end", ([x]) => [line(x - 4, x + 1.5, y, true)]],
    ["spare", ([x]) => [line(x - 4, x + 1.5, y, false)]],
  ];
  const marks: Mark[] = [];
  let x = left + 4;
  for (const [text, draw] of entries) {
    marks.push(...draw([x, y]), words(text, [x + 3, y - smallMm / 2], { heightMm: smallMm }));
    x += textWidthMm(text, "plain", smallMm) + 14;
  }
  return marks;
}
