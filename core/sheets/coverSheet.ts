import type { Plant } from "../plant/plant.ts";
import { billOf } from "./bill.ts";
import type { Book, Draft, Drawn } from "./book.ts";
import { crewCautions } from "./cautions.ts";
import type { Mark } from "./displayList.ts";
import { shortenText, wrapText } from "./fitText.ts";
import { keyMap } from "./keyMap.ts";
import { layoutFacts } from "./layoutFacts.ts";
import { legend } from "./legend.ts";
import { smallMm, stroke, words } from "./marks.ts";
import { panelHead, underHead } from "./panel.ts";
import { drawingBox, type PaperBox } from "./paper.ts";
import { grouped, lengthToBuy, lengthUnit } from "./quantityText.ts";
import { sheetIndex } from "./sheetIndex.ts";
import type { Strip } from "./strips.ts";

const left: PaperBox = { ...drawingBox, right: drawingBox.left + 112 };
const middle: PaperBox = { ...drawingBox, left: left.right + 9, right: drawingBox.right - 96 };
const right: PaperBox = { ...drawingBox, left: middle.right + 9 };
const legendMm = 80;
const cautionsMm = 80;

/** The first sheet: what the job is, where, which sheets, what the symbols mean, how much of everything, and the cautions. */
export function coverDraft(plant: Plant, cut: readonly Strip[]): Draft {
  return { key: "cover", kind: "cover", title: "Cover", scale: "none", draw: (book) => drawCover(plant, cut, book) };
}

function drawCover(plant: Plant, cut: readonly Strip[], book: Book): Drawn {
  const map = { ...middle, bottom: middle.bottom + legendMm + 5 };
  const index = sheetIndex(book, right);
  const drawnMap = keyMap(plant, cut, book, underHead(map));
  return {
    marks: [
      ...jobFacts(plant),
      ...quantities(plant, book, { ...left, top: left.top - 36, bottom: left.bottom + cautionsMm }),
      ...cautions({ ...left, top: left.bottom + cautionsMm }),
      ...panelHead("Key map", map),
      ...drawnMap.marks,
      ...legend({ ...middle, top: middle.bottom + legendMm }),
      ...index.marks,
    ],
    links: [...drawnMap.links, ...index.links],
  };
}

function jobFacts(plant: Plant): readonly Mark[] {
  const settings = plant.settings();
  const width = left.right - left.left;
  const place = [settings.place, settings.county].filter((one) => one !== "").join(", ");
  const lines = [settings.project, place, settings.company].filter((one) => one !== "");
  return [
    words(shortenText(settings.routeName, "narrowBold", 7.5, width), [left.left, left.top - 8], {
      face: "narrowBold",
      heightMm: 7.5,
    }),
    words("Aerial fiber distribution route: drawing set", [left.left, left.top - 14], { heightMm: 2.8 }),
    ...lines.map((text, index) =>
      words(shortenText(text, "plain", 2.5, width), [left.left, left.top - 20.5 - index * 4.4], {
        heightMm: 2.5,
        grey: 0.15,
      }),
    ),
  ];
}

function quantities(plant: Plant, book: Book, box: PaperBox): readonly Mark[] {
  const facts = quantityFacts(plant, book);
  const body = underHead(box);
  const rowMm = Math.min(4.9, (body.top - body.bottom) / facts.length);
  return [
    ...panelHead("Quantities", box),
    ...facts.flatMap(([label, value, unit], index) => {
      const y = body.top - (index + 1) * rowMm + 1.6;
      const text = shortenText(label, "plain", 2.3, box.right - box.left - 34);
      return [
        words(text, [box.left, y], { heightMm: 2.3, layer: "tables" }),
        words(value, [box.right - 12, y], { face: "plainBold", heightMm: 2.3, align: "right", layer: "tables" }),
        words(unit, [box.right - 10.5, y], { heightMm: smallMm, layer: "tables" }),
        stroke("tables", "fine", [
          [box.left, y - 1.5],
          [box.right, y - 1.5],
        ]),
      ];
    }),
  ];
}

function quantityFacts(plant: Plant, book: Book): readonly (readonly [string, string, string])[] {
  const route = plant.route();
  const system = plant.settings().unitSystem;
  const lengths = billOf(plant).filter((one) => one.unit === "length" && one.group !== "Hardware");
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
    ...lengths.slice(0, 7).map((one) => [one.item, lengthToBuy(one.quantity, system), lengthUnit(system)] as const),
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
    for (const line of wrapText(note, "plain", smallMm, width)) {
      marks.push(words(line, [box.left + 5, y], { heightMm: smallMm }));
      y -= 3.3;
    }
    y -= 1;
  });
  return marks;
}
