import type { Plant } from "../../plant/plant.ts";
import type { ProfileStep } from "../../plant/profile.ts";
import { spanClearance } from "../../plant/spanClearance.ts";
import { spanSag } from "../../plant/spanSag.ts";
import { strandAtPole } from "../../plant/strandHeight.ts";
import { governingCase } from "../../plant/strength.ts";
import { catalogueBasis } from "../../rules/rule.ts";
import { isOver } from "../../rules/withinLimit.ts";
import { fixedText } from "../../units/fixedText.ts";
import { formatLength } from "../../units/formatLength.ts";
import { redlinedRows } from "../asBuilt/redlinedRows.ts";
import type { Mark } from "../paper/displayList.ts";
import { type Cell, forceCell, lengthCell } from "../paper/figure.ts";
import type { PaperBox } from "../paper/paper.ts";
import { forceUnit, lengthUnit } from "../paper/quantityText.ts";
import { drawTable } from "../paper/table.ts";
import type { Column } from "../paper/tableRow.ts";
import { limitSource } from "../sourceWords.ts";
import { caseWords } from "../tradeWords.ts";
import { clearanceText, limitFigure, overText, shortText } from "./profileWords.ts";

/**
 * The spans of a sheet of profiles in figures: sag, tension and the clearance with the least to spare.
 *
 * @param designed  the design, where the route is drawn as built: what prints otherwise there is struck
 */
export function profileTable(
  plant: Plant,
  designed: Plant | null,
  steps: readonly ProfileStep[],
  box: PaperBox,
): readonly Mark[] {
  const all = columnsOf(plant).map((one) => ({ ...one, wraps: false }));
  const kept = all.flatMap((column, index) => (isNarrow(box) && column.spared ? [] : [index]));
  const of = <T>(cells: readonly T[]): readonly T[] => kept.flatMap((index) => cells[index] ?? []);
  const rowsOf = (seen: Plant) => steps.map((step) => ({ cells: of(cellsOf(seen, step)) }));
  const rows = designed ? redlinedRows(rowsOf(plant), rowsOf(designed)) : rowsOf(plant);
  return drawTable(of(all), rows, box).marks;
}

/** True where a drawing space is too narrow for every column; the sources of the limits then stand at the foot. */
export function isNarrow({ left, right }: PaperBox): boolean {
  return right - left < leastMm;
}

/** Narrowest drawing space that takes every column, mm. */
const leastMm = 330;

function columnsOf(plant: Plant): readonly (Column & { readonly spared?: boolean })[] {
  const system = plant.settings().unitSystem;
  const [length, force] = [lengthUnit(system), forceUnit(system)];
  return [
    { heading: "Span", share: 30 },
    { heading: "Length", unit: length, share: 15, align: "right" },
    { heading: "Strand at poles", share: 36, spared: true },
    { heading: "Strung sag", share: 19, align: "right" },
    { heading: "Hot sag", share: 18, align: "right" },
    { heading: "Iced sag", share: 18, align: "right" },
    { heading: "Strung tension", unit: force, share: 27, align: "right", spared: true },
    { heading: "Loaded tension", unit: force, share: 27, align: "right" },
    { heading: "Governing case", share: 25, spared: true },
    { heading: "Of allowed", unit: "%", share: 21, align: "right" },
    { heading: "Least to spare over", share: 43 },
    { heading: "Clearance", share: 21, align: "right" },
    { heading: "Case", share: 15 },
    { heading: "Limit", share: 21, align: "right" },
    { heading: "Short by", share: 22, align: "right" },
    { heading: "Source of the limit", share: 86, spared: true },
  ];
}

function cellsOf(plant: Plant, { span, inPoleId, outPoleId }: ProfileStep): readonly Cell[] {
  const system = plant.settings().unitSystem;
  const tag = (id: string) => plant.rowOf("pole", id).tag;
  const height = (id: string) => formatLength(strandAtPole(plant, id).heightM, system, "height");
  const known = spanSag(plant, span.spanId);
  const sags =
    known.kind === "unknown"
      ? ["", "", "", "", "", "", ""]
      : [
          ...[known.stringing, known.hot, known.iced].map((one) => formatLength(one.sagM, system, "sag")),
          ...[known.stringing, known.tension].map((one) => forceCell(one.supportN, system)),
          ...governingCells(plant, span.spanId),
        ];
  return [
    `${tag(inPoleId)} to ${tag(outPoleId)}`,
    lengthCell(span.lengthM, system),
    `${height(inPoleId)}, ${height(outPoleId)}`,
    ...sags,
    ...clearanceCells(plant, span.spanId, span.why),
  ];
}

/** The case that uses most of what the strength set allows, and how much of it. */
function governingCells(plant: Plant, spanId: string): readonly [string, string] {
  const governing = governingCase(plant, spanId);
  if (!governing) return ["no limit", ""];
  const { condition, tensionN, allowedN } = governing;
  const over = isOver(tensionN, allowedN) ? "◆ " : "";
  return [caseWords[condition], `${over}${fixedText((tensionN / allowedN) * 100, 1)}`];
}

function clearanceCells(plant: Plant, spanId: string, why: string | null): readonly string[] {
  const system = plant.settings().unitSystem;
  const clearance = spanClearance(plant, spanId);
  if (!clearance) return ["not known", "", "", "", "", why ?? ""];
  const basis = clearance.limit && catalogueBasis(clearance.limit);
  const source = basis ? limitSource(basis) : "";
  const short = shortText(clearance, system);
  return [
    overText(plant, clearance),
    clearanceText(clearance.measuredM, system),
    caseWords[clearance.condition],
    clearance.limit ? limitFigure(clearance.limit.limitM, system) : "none",
    short === "" ? "" : `◆ ${short}`,
    source,
  ];
}
