import type { Plant } from "../../plant/plant.ts";
import { metresPerFoot } from "../../units/constants.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import { redlinedSchedule } from "../asBuilt/redlinedRows.ts";
import type { Draft } from "../book.ts";
import { type Cell, cellText, type Figure, figure, lengthCell } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { type BillLine, billOf } from "./bill.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

const columns: readonly Column[] = [
  { heading: "Item", share: 90 },
  { heading: "Counted by", share: 90 },
  { heading: "Quantity", share: 26, align: "right" },
  { heading: "Allowance", unit: "%", share: 22, align: "right" },
  { heading: "To order", share: 26, align: "right" },
  { heading: "Unit", share: 20 },
];

/** Bill of materials without prices: quantities from the drawing, hardware by the assembly it goes into, with the company's allowance. */
export function billDrafts(plant: Plant, paper: Paper, designed: Plant | null): readonly Draft[] {
  const { columns, rows, notes } = redlinedSchedule(billSchedule(plant), designed && billSchedule(designed), [
    "Quantity",
  ]);
  const { rest, marks } = noteFoot(notes, paper.drawing);
  return tableDrafts({ kind: "bill", title: "Bill of materials", columns, rows, box: rest, beside: marks });
}

export function billSchedule(plant: Plant): Schedule {
  const rows = billRows(billOf(plant), plant.settings().unitSystem);
  return { name: "Bill of materials", grouped: "Group", columns, rows, notes: [allowanceNote(plant)] };
}

/** How much more than drawn is ordered of what. */
export function allowanceNote(plant: Plant): string {
  const { billAllowanceFrac, pieceAllowanceFrac, unitSystem } = plant.settings();
  const wholes = unitSystem === "us" ? "feet" : "metres";
  return `To order: lengths and hardware ${moreThanDrawn(billAllowanceFrac, "for waste")}, terminals and pieces at guys ${moreThanDrawn(pieceAllowanceFrac, "as spares")}; rounded up to whole ${wholes} and pieces.`;
}

function moreThanDrawn(allowanceFrac: number, reason: string): string {
  return allowanceFrac === 0 ? "as drawn" : `with ${cellText(percentOf(allowanceFrac))} % more ${reason}`;
}

function billRows(lines: readonly BillLine[], system: UnitSystem): readonly TableRow[] {
  const headings = [...new Set(lines.map(billHeading))];
  return headings.flatMap((group): TableRow[] => [
    { group },
    ...lines.filter((one) => billHeading(one) === group).map((one) => ({ cells: billCells(one, system) })),
  ]);
}

/** What a line of the bill stands under: its assembly, else its group. */
export function billHeading({ group, assembly }: BillLine): string {
  return assembly === "" ? group : assembly;
}

/** How much of a line to order, allowance added: whole feet or metres, whole pieces. */
export function toOrder({ quantity, unit, allowanceFrac }: BillLine, system: UnitSystem): number {
  const wanted = quantity * (1 + allowanceFrac);
  return Math.ceil((unit === "length" && system === "us" ? wanted / metresPerFoot : wanted) - 1e-6);
}

/** What a line's quantity is counted in. */
export function billUnit({ unit }: BillLine, system: UnitSystem): string {
  return unit === "length" ? lengthUnit(system) : unit;
}

function billCells(line: BillLine, system: UnitSystem): readonly Cell[] {
  const isLength = line.unit === "length";
  const amount = (quantity: number) =>
    isLength ? lengthCell(quantity, system) : figure(Math.ceil(quantity - 1e-6), 0);
  return [
    line.item,
    line.counted,
    amount(line.quantity),
    line.allowanceFrac === 0 ? "" : percentOf(line.allowanceFrac),
    figure(toOrder(line, system), 0),
    billUnit(line, system),
  ];
}

/** A fraction as a percentage: whole, or to a tenth where it is not. */
function percentOf(fraction: number): Figure {
  const percent = Math.round(fraction * 1000) / 10;
  return figure(percent, Number.isInteger(percent) ? 0 : 1);
}
