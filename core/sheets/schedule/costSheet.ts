import type { Plant } from "../../plant/plant.ts";
import { metresPerFoot } from "../../units/constants.ts";
import { moneyText } from "../../units/moneyText.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { Draft } from "../book.ts";
import { type Cell, figure } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { type BillLine, billOf } from "./bill.ts";
import { allowanceNote, billHeading, billUnit, toOrder } from "./billSheet.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

const columns: readonly Column[] = [
  { heading: "Item", share: 110 },
  { heading: "To order", share: 26, align: "right" },
  { heading: "Unit", share: 20 },
  { heading: "Price each", share: 30, align: "right" },
  { heading: "Amount", share: 34, align: "right" },
];

const priceNote =
  "Prices are the catalogue's, for the company to set; what has none is left out of the sums. Labour, make-ready, permits, tax and freight are not in it.";

/** Bill of materials with prices, for the office: what is ordered, what it costs, and the sums. */
export function costDrafts(plant: Plant, paper: Paper): readonly Draft[] {
  const { columns, rows, notes } = costSchedule(plant);
  const { rest, marks } = noteFoot(notes, paper.drawing);
  return tableDrafts({
    kind: "cost",
    title: "Bill of materials with prices",
    columns,
    rows,
    box: rest,
    leastMm: 180,
    beside: marks,
  });
}

export function costSchedule(plant: Plant): Schedule {
  const rows = costRows([...billOf(plant), ...eachDrop(plant)], plant.settings().unitSystem);
  return { name: "Bill with prices", grouped: "Group", columns, rows, notes: [allowanceNote(plant), priceNote] };
}

/** What one drop costs whatever its length, drop type by drop type. */
function eachDrop(plant: Plant): readonly BillLine[] {
  const drops = [...plant.route().drop.values()];
  return [...new Set(drops.map((one) => one.dropTypeId))].sort().flatMap((id): readonly BillLine[] => {
    const { name, costEach } = plant.rowOf("dropType", id);
    const quantity = drops.filter((one) => one.dropTypeId === id).length;
    if (costEach === 0) return [];
    const line = { group: "Drops", assembly: "", counted: "each", unit: "drop", allowanceFrac: 0 } as const;
    return [{ ...line, item: `${name}: each, whatever its length`, quantity, price: costEach }];
  });
}

function costRows(lines: readonly BillLine[], system: UnitSystem): readonly TableRow[] {
  const headings = [...new Set(lines.map(billHeading))];
  const groups = headings.flatMap((group): readonly TableRow[] => {
    const own = lines.filter((one) => billHeading(one) === group);
    return [{ group, sum: sumText(own, system) }, ...own.map((one) => costRow(one, system))];
  });
  return [...groups, { group: "All of it", sum: totalText(lines, system) }];
}

/** What lines cost together; a sum of nothing but lines without a price is no sum. */
function sumText(lines: readonly BillLine[], system: UnitSystem): string {
  return lines.some(isPriced) ? moneyText(sumOf(lines, system)) : "no prices";
}

/** What the whole bill costs, and how much of it has no price. */
function totalText(lines: readonly BillLine[], system: UnitSystem): string {
  const count = lines.filter((one) => !isPriced(one)).length;
  if (count === 0 || count === lines.length) return sumText(lines, system);
  return `${sumText(lines, system)}, without ${count === 1 ? "1 line that has" : `${count} lines that have`} no price`;
}

function isPriced({ price }: BillLine): boolean {
  return price > 0;
}

function costRow(line: BillLine, system: UnitSystem): TableRow {
  return {
    cells: [
      line.item,
      figure(toOrder(line, system), 0),
      billUnit(line, system),
      isPriced(line) ? moneyCell(unitPrice(line, system)) : "no price",
      isPriced(line) ? moneyCell(amountOf(line, system)) : "",
    ],
  };
}

function moneyCell(amount: number): Cell {
  return figure(amount, 2, { paper: moneyText(amount) });
}

/** Price of a foot, a metre or a piece. */
function unitPrice({ price, unit }: BillLine, system: UnitSystem): number {
  return unit === "length" && system === "us" ? price * metresPerFoot : price;
}

/** What a line costs, to the hundredth, so that the sums are those of what is printed. */
function amountOf(line: BillLine, system: UnitSystem): number {
  return Math.round(toOrder(line, system) * unitPrice(line, system) * 100) / 100;
}

function sumOf(lines: readonly BillLine[], system: UnitSystem): number {
  return lines.reduce((sum, one) => sum + amountOf(one, system), 0);
}
