import { cablesInOrder } from "../../plant/cableOrder.ts";
import { closuresAlong } from "../../plant/cablePath.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Draft } from "../book.ts";
import type { Mark } from "../paper/displayList.ts";
import { fieldRow, fieldRowMm } from "../paper/fieldRow.ts";
import { asFigure } from "../paper/marks.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import { panelHead, panelHeadMm, underHead } from "../paper/panel.ts";
import type { Paper, PaperBox } from "../paper/paper.ts";
import { tableHeightMm } from "../paper/tableCells.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import type { Schedule } from "../schedule/schedule.ts";
import { tableDrafts } from "../schedule/tableSheets.ts";
import { closureDiagram } from "./closureDiagram.ts";
import { closureRows } from "./closureSplices.ts";
import { hubDiagram } from "./hubDiagram.ts";
import { hubRows } from "./hubSplices.ts";
import { diagramHeightMm, diagramPages, type SpliceDiagram } from "./spliceDiagram.ts";
import { drawSplices } from "./spliceDrawing.ts";

const hubColumns: readonly Column[] = [
  { heading: "Leg", share: 12, align: "right" },
  { heading: "Cable", share: 44 },
  { heading: "Fiber", share: 14, align: "right" },
  { heading: "Tube", share: 38, chip: true },
  { heading: "Fiber colour", share: 38, chip: true },
  { heading: "Lights", share: 76 },
  { heading: "Ports used", share: 24, align: "right" },
  { heading: "Ports behind", share: 24, align: "right" },
  { heading: "Loss", unit: "dB", share: 26 },
  { heading: "Loss back", unit: "dB", share: 26 },
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
  { heading: "Loss", unit: "dB", share: 26 },
  { heading: "Loss back", unit: "dB", share: 26 },
  { heading: "Spliced", share: 16 },
];

/** Headings of splices would ask to be filled in where nothing is spliced. */
const bareColumns: readonly Column[] = [{ heading: "Closure", share: 1 }];

const lossNote =
  "Loss of a splice: the mean of both directions counts; a single direction may read too low. At most 0.10 dB on average and 0.20 dB each: practice. Tube and fiber colours follow TIA-598.";

/**
 * Which fiber goes to which, as a table and as a drawing: at the hub, output by output, then in each closure; closures with nothing to
 * splice share their sheets.
 */
export function spliceDrafts(plant: Plant, paper: Paper): readonly Draft[] {
  const closures = closuresOf(plant).map((id) => closurePlace(plant, id));
  const bare = closures.filter(isBare);
  const isShared = bare.length > 1;
  return [
    ...drafts(paper, {
      key: "hub",
      name: "hub",
      columns: hubColumns,
      rows: hubRows(plant),
      diagram: hubDiagram(plant),
    }),
    ...closures.filter((one) => !isShared || !isBare(one)).flatMap((one) => drafts(paper, one)),
    ...(isShared ? drafts(paper, sharedPlace(bare)) : []),
  ];
}

function isBare({ rows }: Pick<SplicePlace, "rows">): boolean {
  return rows.every((row) => !("cells" in row));
}

function closurePlace(plant: Plant, id: string): SplicePlace {
  const rows = closureRows(plant, id);
  return {
    key: id,
    name: `closure ${plant.rowOf("closure", id).name}`,
    columns: isBare({ rows }) ? bareColumns : closureColumns,
    rows,
    diagram: closureDiagram(plant, id),
  };
}

/** Closures with nothing to splice as one place, each with a box of its own to tick. */
function sharedPlace(places: readonly SplicePlace[]): SplicePlace {
  return {
    key: "bare closures",
    name: "closures without splices",
    columns: bareColumns,
    rows: places.flatMap(({ rows }): readonly TableRow[] => [...rows, { note: "□ Sealed and bonded." }]),
    diagram: { left: [], right: [], joins: [] },
    leastMm: 150,
  };
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

/** A place where fibers are spliced. */
type SplicePlace = {
  readonly key: string;
  readonly name: string;
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
  readonly diagram: SpliceDiagram;
  /** Narrowest width at which its rows stand in columns side by side, mm; all across where not given. */
  readonly leastMm?: number;
};

const drawingGapMm = 7;

/** The table of a place, and its drawing: under the table where there is room, else on sheets of its own. */
function drafts(paper: Paper, { key, name, columns, rows, diagram, leastMm }: SplicePlace): readonly Draft[] {
  const { rest, marks } = noteFoot([lossNote], paper.drawing);
  const fields = fieldRow(["Sealed and bonded", "Splicer", "Machine, last checked", "Date"], rest);
  const box = { ...rest, bottom: rest.bottom + fieldRowMm };
  const under = { ...box, top: box.top - tableHeightMm(columns, rows, box, true) - drawingGapMm };
  const isDrawn = diagram.joins.some((one) => one.isSpliced);
  const isUnder = isDrawn && under.top - under.bottom >= panelHeadMm + diagramHeightMm(diagram);
  const tables = tableDrafts({
    kind: "splice",
    key: `splice ${key}`,
    title: `Splice sheet, ${name}`,
    columns,
    rows,
    box,
    ...(leastMm === undefined ? {} : { leastMm }),
    ruled: true,
    beside: [...marks, ...fields, ...(isUnder ? drawn(name, diagram, under) : [])],
  });
  if (!isDrawn || isUnder || tables.length === 0) return tables;
  return [...tables, ...drawingDrafts(paper, key, name, diagram)];
}

function drawingDrafts({ drawing }: Paper, key: string, name: string, diagram: SpliceDiagram): readonly Draft[] {
  const pages = diagramPages(diagram, drawing.top - drawing.bottom - panelHeadMm);
  return pages.map(
    (page, index): Draft => ({
      key: `splice drawing ${key} ${index + 1}`,
      kind: "splice",
      title: `Splice diagram, ${name}${pages.length === 1 ? "" : `, ${index + 1} of ${pages.length}`}`,
      scale: "none",
      draw: () => ({ marks: drawn(name, page, drawing) }),
    }),
  );
}

function drawn(name: string, diagram: SpliceDiagram, box: PaperBox): readonly Mark[] {
  const passing = diagram.joins.some((one) => !one.isSpliced) ? "; a fine line where fibers pass uncut" : "";
  const told = `The splices of the ${name} as a drawing; the table tells the same`;
  return [
    ...panelHead(`Splice diagram, ${name}: a sleeve where two fibers are fused${passing}`, box),
    ...asFigure(told, drawSplices(diagram, underHead(box))),
  ];
}
