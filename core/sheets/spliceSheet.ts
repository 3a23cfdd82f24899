import { closuresAlong } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import type { Draft } from "./book.ts";
import { cablesInOrder } from "./cableOrder.ts";
import { closureRows } from "./closureSplices.ts";
import { fieldRow, fieldRowMm } from "./fieldRow.ts";
import { hubRows } from "./hubSplices.ts";
import { noteFoot } from "./noteFoot.ts";
import type { Paper } from "./paper.ts";
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
  const closures = cablesInOrder(plant).flatMap((cable) => closuresAlong(plant, cable.id));
  return [
    ...drafts(paper, "hub", "Splice sheet, hub", hubColumns, hubRows(plant)),
    ...closures.flatMap((id) =>
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
