import { basisWords } from "../explain/basisWords.ts";
import { explain } from "../explain/explain.ts";
import type { Explanation, FigureRef } from "../explain/explanation.ts";
import { figureText } from "../explain/figureText.ts";
import { inputBasis } from "../explain/inputBasis.ts";
import { workedSteps } from "../explain/workedSteps.ts";
import { layerNamesOf } from "../model/layerNames.ts";
import type { Plant } from "../plant/plant.ts";
import { type Basis, isUnverified } from "../rules/rule.ts";
import { sheetCaution } from "./cautions.ts";
import { logoMark } from "./logo.ts";
import type { DrawingSet, Mark, Sheet, SheetSizeMm } from "./paper/displayList.ts";
import { shortenText } from "./paper/fitText.ts";
import { type Block, flow, paragraph, tableBlocks, white } from "./paper/flow.ts";
import { smallMm, stroke, words } from "./paper/marks.ts";
import { type PaperBox, uprightPages } from "./paper/paper.ts";
import { fittedMm, type Picture } from "./paper/picture.ts";
import type { Column } from "./paper/tableRow.ts";
import { weigher } from "./paper/weigher.ts";
import { revisionsInOrder } from "./revisions.ts";
import { subjectWords } from "./subjectWords.ts";

/** Wider at the left, where pages are bound. */
const marginMm = { left: 22, right: 14, top: 14, bottom: 14 } as const;
const headMm = 12;
const footMm = 12;

/**
 * Figures worked out on upright pages, one after the other: what goes in, formula, steps, result, limit and every source. A figure
 * whose row is gone has no page.
 */
export function composeWorksheets(plant: Plant, refs: readonly FigureRef[], logo: Picture | null = null): DrawingSet {
  const settings = plant.settings();
  const { routeName, project, place, county, company, unitSystem } = settings;
  const sizeMm = uprightPages[unitSystem];
  const pages = refs.flatMap((ref) => worksheetPages(plant, ref, sizeMm, logo));
  const weigh = weigher(settings);
  return {
    title: `${routeName}: worksheets`,
    subject: [project, place, county].filter((one) => one !== "").join(", "),
    author: company,
    dateIso: revisionsInOrder(plant).at(-1)?.dateIso ?? "",
    layerNames: layerNamesOf(settings.layerNames),
    sheets: pages.map(({ title, marks }, index): Sheet => {
      const number = String(index + 1);
      const foot = pageNumber(`Page ${number} of ${pages.length}`, sizeMm);
      const weighed = [...marks, foot].map(weigh);
      return { number, title, kind: "worksheet", keys: [], scale: "none", sizeMm, marks: weighed, links: [] };
    }),
  };
}

type Page = { readonly title: string; readonly marks: readonly Mark[] };

function worksheetPages(plant: Plant, ref: FigureRef, sizeMm: SheetSizeMm, logo: Picture | null): readonly Page[] {
  const told = explain(plant, ref, plant.settings().unitSystem);
  if (!told) return [];
  const box: PaperBox = {
    left: marginMm.left,
    right: sizeMm.width - marginMm.right,
    top: sizeMm.height - marginMm.top - headMm,
    bottom: marginMm.bottom + footMm,
  };
  const title = paragraph(told.title, box, { face: "narrowBold", heightMm: 4.2, part: { as: "heading" } }, 3);
  const blocks = told.kind === "known" ? [title, ...workedBlocks(plant, told, box)] : [title, paragraph(told.why, box)];
  return flow(blocks, box).map((marks) => ({
    title: told.title,
    marks: [...head(plant, box, logo), ...foot(ref, box), ...marks],
  }));
}

function workedBlocks(plant: Plant, told: Explanation, box: PaperBox): readonly Block[] {
  const { result, limit, formula, source, assumed } = told;
  const strong = { face: "plainBold", heightMm: 2.8 } as const;
  return [
    paragraph(`${result.symbol} = ${result.text}`, box, strong),
    ...(limit ? [paragraph(`${limit.words}: ${limit.text}. ${basisWords(limit.basis)}.`, box)] : []),
    paragraph(told.words, box, {}, 3),
    paragraph(`${result.symbol} = ${formula}`, box, strong, 4),
    ...inputBlocks(plant, told, box),
    ...tableBlocks("Worked out, in SI units", stepColumns, stepRows(told), box),
    paragraph(`Formula from: ${source}.`, box),
    ...assumed.map((one) => paragraph(one, box)),
  ];
}

const inputColumns: readonly Column[] = [
  { heading: "Symbol", share: 12 },
  { heading: "What it is", share: 58 },
  { heading: "Value", share: 24, align: "right", wraps: true },
  { heading: "In SI units", share: 26, align: "right", wraps: true },
  { heading: "Read from", share: 40 },
  { heading: "Source", share: 22 },
];

/** Inputs in a table, then each source they lean on once, under its number. */
function inputBlocks(plant: Plant, { inputs }: Explanation, box: PaperBox): readonly Block[] {
  const sources: string[] = [];
  const sourceText = (basis: Basis | null): string => {
    if (!basis) return "";
    const text = basisWords(basis);
    if (!sources.includes(text)) sources.push(text);
    return `[${sources.indexOf(text) + 1}] ${isUnverified(basis) ? "unverified" : basis.mark}`;
  };
  const rows = inputs.map(({ symbol, name, text, value, unit, from }) => {
    const source = sourceText(inputBasis(plant, from));
    return { cells: [symbol, name, text, `${siText(value)} ${unit}`, from ? subjectWords(plant, from) : "", source] };
  });
  const listed = sources.map((text, index) => paragraph(`[${index + 1}] ${text}.`, box, { heightMm: smallMm }, 1.6));
  return [...tableBlocks("What goes in", inputColumns, rows, box), ...listed, ...(listed.length > 0 ? [white(4)] : [])];
}

const stepColumns: readonly Column[] = [
  { heading: "Piece of the formula", share: 76 },
  { heading: "With its numbers", share: 76 },
  { heading: "Comes to", share: 28, align: "right" },
];

function stepRows(told: Explanation) {
  return workedSteps(told).map(({ formula, numbers, value }) => ({
    cells: [formula, `= ${numbers}`, `= ${siText(value)}`],
  }));
}

/** Room of a logo over the rule of the head, mm: it reaches into the margin, to where printers still print. */
const logoMm = { over: 5.8, width: 56, height: 14 } as const;
const logoGutterMm = 2.4;

/** Whose route it is, over the text of every page. */
function head(plant: Plant, { left, right, top }: PaperBox, logo: Picture | null): readonly Mark[] {
  const { routeName, project, company } = plant.settings();
  const joined = (...parts: readonly string[]): string => parts.filter((one) => one !== "").join(" · ");
  const line = (text: string, x: number, y: number): Mark =>
    words(shortenText(text, "plain", 2.4, right - x - 26), [x, y], { heightMm: 2.4 });
  if (logo === null) return [line(joined(routeName, project, company), left, top + 7), ...headEnd(left, right, top)];
  const base = top + logoMm.over;
  const room: PaperBox = { left, right: left + logoMm.width, bottom: base, top: base + logoMm.height };
  const [widthMm, heightMm] = fittedMm(logo, room);
  const beside = left + widthMm + logoGutterMm;
  return [
    logoMark(logo, company, { ...room, top: base + heightMm }),
    line(company, beside, top + 11),
    line(joined(routeName, project), beside, top + 7),
    ...headEnd(left, right, top),
  ];
}

function headEnd(left: number, right: number, top: number): readonly Mark[] {
  return [
    words("Worksheet", [right, top + 7], { face: "plainBold", heightMm: 2.4, align: "right" }),
    rule(left, right, top + 4.5),
  ];
}

/** The caution and the figure's name, under the text of every page. */
function foot(ref: FigureRef, { left, right, bottom }: PaperBox): readonly Mark[] {
  const width = right - left;
  return [
    rule(left, right, bottom - 3.4),
    words(shortenText(sheetCaution, "narrow", smallMm, width), [left, bottom - 7], {
      face: "narrow",
      heightMm: smallMm,
    }),
    words(shortenText(figureText(ref), "narrow", smallMm, width - 30), [left, bottom - 11], {
      face: "narrow",
      heightMm: smallMm,
      grey: 0.35,
    }),
  ];
}

function rule(left: number, right: number, y: number): Mark {
  return stroke("frame", "thin", [
    [left, y],
    [right, y],
  ]);
}

function pageNumber(text: string, { width }: SheetSizeMm): Mark {
  return words(text, [width - marginMm.right, marginMm.bottom + footMm - 11], {
    face: "narrow",
    heightMm: smallMm,
    align: "right",
  });
}

/** Six figures are more than a tape or a scale gives. */
function siText(value: number): string {
  return String(Number(value.toPrecision(6)));
}
