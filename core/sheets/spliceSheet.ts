import { cablesInOrder } from "../plant/cableOrder.ts";
import { closuresAlong } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import type { Draft } from "./book.ts";
import { closureRows } from "./closureSplices.ts";
import { fieldRow, fieldRowMm } from "./fieldRow.ts";
import { hubRows } from "./hubSplices.ts";
import { noteFoot } from "./noteFoot.ts";
import type { Paper } from "./paper.ts";
import type { Schedule } from "./schedule.ts";
import type { Column, TableRow } from "./table.ts";
import { tableDrafts } from "./tableSheets.ts";

const hubColumns: readonly Column[] = [
  { heading: "Leg", share: 12, align: "right" },
  { heading: "Cable", share: 44 },
  { heading: "Fiber", share: 14, align: "right" },
  { heading: "Tube", share: 38, chip: true },
  { heading: "Fiber colour", share: 38, chip: true },
  { heading: "Lights", share: 96 },
  { heading: "Ports used", share: 24, align: "right" },
  { heading: "Ports behind", share: 24, align: "right" },
  { heading: "Loss", unit: "dB", share: 20, align: "right" },
  { heading: "Loss back", unit: "dB", share: 20, align: "right" },
  { heading: "Spliced", share: 16 },
];

const closureColumns: readonly Column[] = [
  { heading: "From cable", share: 44 },
  { heading: "Fiber", share: 14, align: "right" },
  { heading: "Tube", share: 38, chip: true },
  { heading: "Fiber colour", share: 38, chip: true },
  { heading: "To cable", share: 44 },
  { heading: "Fiber", share: 14, align: "right" },
  { heading: "Tube", share: 38, chip: true },
  { heading: "Fiber colour", share: 38, chip: true },
  { heading: "Lit by", share: 44 },
  { heading: "Loss", unit: "dB", share: 20, align: "right" },
  { heading: "Loss back", unit: "dB", share: 20, align: "right" },
  { heading: "Spliced", share: 16 },
];

const lossNote =
  "Loss of a splice: the mean of both directions counts; a single direction may read too low. At most 0.10 dB on average and 0.20 dB each: practice. Tube and fiber colours follow TIA-598.";

/** Which fiber goes to which: at the hub, output by output, then a sheet for each closure. */
export function spliceDrafts(plant: Plant, paper: Paper): readonly Draft[] {
  return [
    ...drafts(paper, "hub", "Splice sheet, hub", hubColumns, hubRows(plant)),
    ...closuresOf(plant).flatMap((id) =>
      drafts(
        paper,
        id,
        `Splice sheet, closure ${plant.rowOf("closure", id).name}`,
        closureColumns,
        closureRows(plant, id),
      ),
    ),
  ];
}

/** The same as two tables: the legs at the hub, and the splices of all closures. */
export function spliceSchedules(plant: Plant): readonly Schedule[] {
  const sided = closureColumns.map((one, at) => (at < 8 ? { ...one, over: at < 4 ? "From" : "To" } : one));
  const closed = closuresOf(plant).flatMap((id) => closureRows(plant, id));
  return [
    { name: "Splices at the hub", grouped: "Hub output", columns: hubColumns, rows: hubRows(plant), notes: [lossNote] },
    { name: "Splices in closures", grouped: "Closure", columns: sided, rows: closed, notes: [lossNote] },
  ];
}

function closuresOf(plant: Plant): readonly string[] {
  return cablesInOrder(plant).flatMap((cable) => closuresAlong(plant, cable.id));
}

function drafts(
  paper: Paper,
  place: string,
  title: string,
  columns: readonly Column[],
  rows: readonly TableRow[],
): readonly Draft[] {
  const { rest, marks } = noteFoot([lossNote], paper.drawing);
  const fields = fieldRow(["Sealed and bonded", "Splicer", "Machine, last checked", "Date"], rest);
  return tableDrafts({
    kind: "splice",
    key: `splice ${place}`,
    title,
    columns,
    rows,
    box: { ...rest, bottom: rest.bottom + fieldRowMm },
    beside: [...marks, ...fields],
  });
}
