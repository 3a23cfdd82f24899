import { sheathLength } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { byName } from "../plant/sorting.ts";
import type { Book, Draft, Drawn } from "./book.ts";
import { crewCautions } from "./cautions.ts";
import { keyMap } from "./keyMap.ts";
import { layoutFacts } from "./layoutFacts.ts";
import { legend } from "./legend.ts";
import type { Mark } from "./paper/displayList.ts";
import { cellText, lengthCell } from "./paper/figure.ts";
import { shortenText, wrapText } from "./paper/fitText.ts";
import { asFigure, asParagraph, smallMm, stroke, words } from "./paper/marks.ts";
import { textWidthMm } from "./paper/measureText.ts";
import { panelHead, underHead } from "./paper/panel.ts";
import type { Paper, PaperBox } from "./paper/paper.ts";
import { cellPart } from "./paper/part.ts";
import { grouped, lengthUnit } from "./paper/quantityText.ts";
import type { Strip } from "./plan/strips.ts";
import { type BillLine, lengthLines } from "./schedule/bill.ts";
import { sheetIndex } from "./sheetIndex.ts";

const columnMm = { facts: 112, index: 87, narrowIndex: 78 } as const;
const gutterMm = 9;
const jobMm = 36;
const legendMm = 84;
const cautionsMm = 80;
/** Narrower or lower drawing spaces take two sheets, mm. */
const oneSheetMm = { width: 360, height: 200 } as const;

/** Where the parts of the cover stand. */
type CoverBoxes = {
  readonly job: PaperBox;
  readonly quantities: PaperBox;
  readonly map: PaperBox;
  readonly legend: PaperBox;
  readonly cautions: PaperBox;
  readonly index: PaperBox;
};

const mapWords = "Key map: the whole route with the outline and number of every plan sheet, north up";

/** The first sheet, two on small paper: what the job is, where, which sheets, what the symbols mean, how much of everything, and the cautions. */
export function coverDrafts(
  plant: Plant,
  { drawing }: Paper,
  cut: readonly Strip[],
  isAsBuilt: boolean,
): readonly Draft[] {
  const draft = (key: string, title: string, draw: Draft["draw"]): Draft => ({
    key,
    kind: "cover",
    title,
    scale: "none",
    draw,
  });
  const isWhole = drawing.right - drawing.left >= oneSheetMm.width && drawing.top - drawing.bottom >= oneSheetMm.height;
  const boxes = isWhole ? oneSheetBoxes(drawing) : twoSheetBoxes(drawing);
  const front = (book: Book) => frontPart(plant, cut, book, boxes);
  const back = (book: Book) => backPart(book, boxes, isAsBuilt);
  if (isWhole) return [draft("cover", "Cover", (book) => together(front(book), back(book)))];
  return [draft("cover", "Cover", front), draft("cover 2", "Cover: sheets, legend and notes", back)];
}

function oneSheetBoxes(drawing: PaperBox): CoverBoxes {
  const left = { ...drawing, right: drawing.left + columnMm.facts };
  const index = { ...drawing, left: drawing.right - columnMm.index };
  const middle = { ...drawing, left: left.right + gutterMm, right: index.left - gutterMm };
  return {
    job: left,
    quantities: { ...left, top: left.top - jobMm, bottom: left.bottom + cautionsMm },
    map: { ...middle, bottom: middle.bottom + legendMm + 5 },
    legend: { ...middle, top: middle.bottom + legendMm },
    cautions: { ...left, top: left.bottom + cautionsMm },
    index,
  };
}

function twoSheetBoxes(drawing: PaperBox): CoverBoxes {
  const left = { ...drawing, right: drawing.left + columnMm.facts };
  const index = { ...drawing, right: drawing.left + columnMm.narrowIndex };
  const beside = { ...drawing, left: index.right + gutterMm };
  return {
    job: left,
    quantities: { ...left, top: left.top - jobMm },
    map: { ...drawing, left: left.right + gutterMm },
    legend: { ...beside, bottom: beside.top - legendMm },
    cautions: { ...beside, top: beside.top - legendMm - 3 },
    index,
  };
}

function frontPart(plant: Plant, cut: readonly Strip[], book: Book, { job, quantities, map }: CoverBoxes): Drawn {
  const { marks, links } = keyMap(plant, cut, book, underHead(map));
  return {
    marks: [
      ...jobFacts(plant, job),
      ...quantityList(plant, book, quantities),
      ...panelHead("Key map", map),
      ...asFigure(mapWords, marks),
    ],
    links,
  };
}

function backPart(book: Book, boxes: CoverBoxes, isAsBuilt: boolean): Drawn {
  const { marks, links } = sheetIndex(book, boxes.index);
  return { marks: [...cautions(boxes.cautions), ...legend(boxes.legend, isAsBuilt), ...marks], links };
}

function together(...parts: readonly Drawn[]): Drawn {
  return { marks: parts.flatMap((one) => one.marks), links: parts.flatMap((one) => one.links ?? []) };
}

const nameSizesMm = [7.5, 6, 5] as const;

function jobFacts(plant: Plant, box: PaperBox): readonly Mark[] {
  const settings = plant.settings();
  const width = box.right - box.left;
  const place = [settings.place, settings.county].filter((one) => one !== "").join(", ");
  const lines = [settings.project, place, settings.company].filter((one) => one !== "");
  const nameMm = nameSizesMm.find((one) => textWidthMm(settings.routeName, "narrowBold", one) <= width) ?? 4;
  return [
    words(shortenText(settings.routeName, "narrowBold", nameMm, width), [box.left, box.top - 8], {
      face: "narrowBold",
      heightMm: nameMm,
    }),
    words("Aerial fiber distribution route: drawing set", [box.left, box.top - 14], { heightMm: 2.8 }),
    ...lines.map((text, index) =>
      words(shortenText(text, "plain", 2.5, width), [box.left, box.top - 20.5 - index * 4.4], {
        heightMm: 2.5,
        grey: 0.15,
      }),
    ),
  ];
}

function quantityList(plant: Plant, book: Book, box: PaperBox): readonly Mark[] {
  const facts = quantityFacts(plant, book);
  const body = underHead(box);
  const rowMm = Math.min(4.9, (body.top - body.bottom) / facts.length);
  const table = { columnCount: 3 };
  return [
    ...panelHead("Quantities", box),
    ...facts.flatMap(([label, value, unit], index) => {
      const y = body.top - (index + 1) * rowMm + 1.6;
      const text = shortenText(label, "plain", 2.3, box.right - box.left - 34);
      const row = { table };
      const [named, amount, measure] = [cellPart(row, 0, "row"), cellPart(row, 1), cellPart(row, 2)];
      return [
        words(text, [box.left, y], { heightMm: 2.3, layer: "tables", part: named }),
        words(value, [box.right - 12, y], {
          face: "plainBold",
          heightMm: 2.3,
          align: "right",
          layer: "tables",
          part: amount,
        }),
        words(unit, [box.right - 10.5, y], { heightMm: smallMm, layer: "tables", part: measure }),
        stroke("tables", "fine", [
          [box.left, y - 1.5],
          [box.right, y - 1.5],
        ]),
      ];
    }),
  ];
}

/** As many lengths are listed one by one; of more, cables are added up by their type. */
const mostLengths = 8;

/** Strand, cables, drops and guys with their lengths, m. */
function lengthFacts(plant: Plant): readonly (readonly [string, number])[] {
  const { strand, cables, drops, guys } = lengthLines(plant);
  const told = (lines: readonly BillLine[]) => lines.map((one) => [one.item, one.quantity] as const);
  const isMany = strand.length + cables.length + drops.length + guys.length > mostLengths;
  return [...told(strand), ...(isMany ? byCableType(plant) : told(cables)), ...told(drops), ...told(guys)];
}

function byCableType(plant: Plant): readonly (readonly [string, number])[] {
  const sums = new Map<string, { count: number; lengthM: number }>();
  for (const id of plant.all("cable")) {
    const { name } = plant.rowOf("cableType", plant.rowOf("cable", id).cableTypeId);
    const { count, lengthM } = sums.get(name) ?? { count: 0, lengthM: 0 };
    sums.set(name, { count: count + 1, lengthM: lengthM + sheathLength(plant, id).totalM });
  }
  return [...sums]
    .sort(([a], [b]) => byName(a, b))
    .map(([name, { count, lengthM }]) => [`${count} ${count === 1 ? "cable" : "cables"}: ${name}`, lengthM] as const);
}

function quantityFacts(plant: Plant, book: Book): readonly (readonly [string, string, string])[] {
  const route = plant.route();
  const system = plant.settings().unitSystem;
  const portCount = [...route.terminal.values()].reduce(
    (sum, one) => sum + plant.rowOf("terminalModel", one.terminalModelId).portCount,
    0,
  );
  const reservedCount = [...route.terminal.values()].reduce((sum, one) => sum + one.reservedPortCount, 0);
  const usedCount = new Set([...route.drop.values()].map((one) => `${one.terminalId} ${one.port}`)).size;
  const open = (severity: string) =>
    grouped(book.openFindings.filter((one) => one.finding.severity === severity).length);
  return [
    ["Poles", grouped(route.pole.size), ""],
    ["Spans", grouped(route.span.size), ""],
    ...lengthFacts(plant).map(
      ([item, lengthM]) => [item, cellText(lengthCell(lengthM, system)), lengthUnit(system)] as const,
    ),
    ["Terminals", grouped(route.terminal.size), ""],
    [
      "Ports used, reserved, spare",
      [usedCount, reservedCount, portCount - usedCount - reservedCount].map(grouped).join(", "),
      "",
    ],
    ["Living units", grouped(route.livingUnit.size), ""],
    ["Drops", grouped(route.drop.size), ""],
    ...layoutFacts(route),
    ["Open errors, warnings, notes", `${open("error")}, ${open("warning")}, ${open("note")}`, ""],
  ];
}

const leadMm = 3.3;

function cautions(box: PaperBox): readonly Mark[] {
  const marks: Mark[] = [...panelHead("General notes and cautions", box)];
  const width = box.right - box.left - 5;
  let y = box.top - 10;
  const notes = [
    ...crewCautions.map((one) => `${one.text} ${one.source}`),
    "Lengths lie in the horizontal plane. Heights stand above the ground at the pole. Fiber and tube colours follow TIA-598.",
    "Symbols larger than scale stand beside their true places; hangers, rings and dimensions tell those.",
  ];
  notes.forEach((note, index) => {
    marks.push(words(`${index + 1}`, [box.left + 2.6, y], { heightMm: smallMm, align: "right", face: "plainBold" }));
    const lines = wrapText(note, "plain", smallMm, width);
    const top = y;
    marks.push(
      ...asParagraph(lines.map((line, row) => words(line, [box.left + 5, top - row * leadMm], { heightMm: smallMm }))),
    );
    y -= lines.length * leadMm + 1;
  });
  return marks;
}
