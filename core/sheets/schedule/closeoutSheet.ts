import { bondPlaces } from "../../plant/bondPlaces.ts";
import { dropCutM } from "../../plant/dropView.ts";
import type { Plant } from "../../plant/plant.ts";
import { carriesStrand } from "../../plant/separation.ts";
import { polesAlong, type Step } from "../../plant/spanRuns.ts";
import { strandAtPole } from "../../plant/strandHeight.ts";
import { portsOf, terminalPlace } from "../../plant/terminalView.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { Draft } from "../book.ts";
import { terminalFacts } from "../jobCard/terminalFacts.ts";
import { fieldRow, fieldRowMm } from "../paper/fieldRow.ts";
import { cellText, lengthCell } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { closeoutSpanRow, spanColumns } from "./closeoutSpans.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

/** What the forms are about: steps of the line in their order, and terminals in theirs. */
type Along = { readonly steps: readonly Step[]; readonly terminalIds: readonly string[] };

const formNote =
  "Write what was built and measured, not what was drawn. A box left empty says that nobody looked. Light by source and power meter, cords referenced before: TIA-526-7, IEC 61280-4-2 [from memory].";

/** Forms for the field to fill in, each row what was drawn beside what was built and measured: poles, spans, terminals, ports. */
export function closeoutDrafts(plant: Plant, paper: Paper, along: Along): readonly Draft[] {
  const { rest, marks } = noteFoot([formNote], paper.drawing);
  const signed = fieldRow(["Filled in by", "Instrument, last calibrated", "Checked by", "Date"], rest);
  return closeoutForms(plant, along).flatMap(({ what, title, columns, rows, leastMm }) =>
    tableDrafts({
      kind: "closeout",
      key: `closeout ${what}`,
      title,
      columns,
      rows,
      box: { ...rest, bottom: rest.bottom + fieldRowMm },
      ruled: true,
      ...(leastMm === undefined ? {} : { leastMm }),
      beside: [...marks, ...signed],
    }),
  );
}

/** The same forms as tables, to be filled in where a spreadsheet is at hand. */
export function closeoutSchedules(plant: Plant, along: Along): readonly Schedule[] {
  return closeoutForms(plant, along).map(({ what, grouped, columns, rows }) => ({
    name: `Closeout of ${what}`,
    grouped,
    columns,
    rows,
    notes: [formNote],
  }));
}

type Form = Pick<Schedule, "grouped" | "columns" | "rows"> & {
  readonly what: string;
  readonly title: string;
  /** Narrowest width at which two columns of rows stand side by side, mm; left out where they never do. */
  readonly leastMm?: number;
};

function closeoutForms(plant: Plant, { steps, terminalIds }: Along): readonly Form[] {
  const poleIds = polesAlong(steps).filter((id) => carriesStrand(plant, id));
  const bonded = new Set(bondPlaces(plant, steps).map((one) => one.poleId));
  const strung = steps.filter((one) => plant.rowOf("span", one.spanId).strandSectionId !== null);
  const unit = lengthUnit(plant.settings().unitSystem);
  return [
    {
      what: "poles",
      title: "Closeout, poles",
      grouped: null,
      columns: poleColumns,
      rows: poleIds.map((id) => poleRow(plant, id, bonded.has(id))),
    },
    {
      what: "spans",
      title: "Closeout, spans",
      grouped: null,
      columns: spanColumns(plant.settings().unitSystem),
      rows: strung.map((one) => closeoutSpanRow(plant, one.spanId)),
    },
    {
      what: "terminals",
      title: "Closeout, terminals",
      grouped: null,
      columns: terminalColumns(unit),
      rows: terminalIds.map((id) => terminalRow(plant, id)),
    },
    {
      what: "ports",
      title: "Closeout, ports and drops",
      grouped: "Terminal",
      columns: portColumns(unit),
      rows: terminalIds.flatMap((id) => portRows(plant, id)),
      leastMm: 180,
    },
  ];
}

const poleColumns: readonly Column[] = [
  { heading: "Pole", share: 28 },
  { heading: "Strand drawn at", share: 28, align: "right" },
  { heading: "Built at", share: 28 },
  { heading: "To supply above, measured", share: 36 },
  { heading: "To communication, measured", share: 36 },
  { heading: "Bond", share: 14 },
  { heading: "Guy", share: 14 },
  { heading: "Tag", share: 14 },
  { heading: "Photo", share: 20 },
  { heading: "Left open, remarks", share: 110 },
];

function poleRow(plant: Plant, poleId: string, isBonded: boolean): TableRow {
  const system = plant.settings().unitSystem;
  const drawn = formatLength(strandAtPole(plant, poleId).heightM, system, "height");
  const isGuyed = plant.where("guy", "poleId", poleId).length > 0;
  return {
    cells: [
      plant.rowOf("pole", poleId).tag,
      drawn,
      "",
      "",
      "",
      isBonded ? "□" : "none",
      isGuyed ? "□" : "none",
      "□",
      "",
      "",
    ],
  };
}

function terminalColumns(unit: string): readonly Column[] {
  return [
    { heading: "Terminal", share: 28 },
    { heading: "Pole, towards", share: 40 },
    { heading: "Drawn from pole", share: 24, align: "right" },
    { heading: "Hung at", share: 22 },
    { heading: "Serial number", share: 42 },
    { heading: "Sheath opened, drawn", unit, share: 34 },
    { heading: "Marks read, from and to", unit, share: 40 },
    { heading: "Coil drawn", unit, share: 20, align: "right" },
    { heading: "Coil left", unit, share: 20 },
    { heading: "Worst splice", unit: "dB", share: 22 },
    { heading: "Sealed", share: 14 },
    { heading: "Bond", share: 12 },
    { heading: "Photo", share: 20 },
    { heading: "Left open, remarks", share: 54 },
  ];
}

function terminalRow(plant: Plant, terminalId: string): TableRow {
  const system = plant.settings().unitSystem;
  const facts = terminalFacts(plant, terminalId);
  const { opening, coil } = facts;
  const length = (valueM: number) => lengthCell(valueM, system);
  return {
    cells: [
      facts.terminal.name,
      `${facts.poleTag}, ${facts.towardsTag}`,
      formatLength(terminalPlace(plant, terminalId).fromPoleM, system, "offset"),
      "",
      "",
      opening ? `${cellText(length(opening.fromM))} to ${cellText(length(opening.toM))}` : "no coil drawn",
      "",
      coil ? length(coil.storedM) : "",
      "",
      "",
      "□",
      "□",
      "",
      "",
    ],
  };
}

function portColumns(unit: string): readonly Column[] {
  return [
    { heading: "House tag", share: 22 },
    { heading: "Living unit", share: 54 },
    { heading: "Drop drawn", unit, share: 18, align: "right" },
    { heading: "Drop hung", unit, share: 18 },
    { heading: "Light", unit: "dBm", share: 18 },
    { heading: "At", unit: "nm", share: 14 },
    { heading: "At the house", unit: "dBm", share: 18 },
    { heading: "Capped", share: 16 },
    { heading: "Tested", share: 16 },
  ];
}

function portRows(plant: Plant, terminalId: string): readonly TableRow[] {
  const system = plant.settings().unitSystem;
  const { name } = plant.rowOf("terminal", terminalId);
  const rows = portsOf(plant, terminalId).flatMap(({ port, dropIds }): readonly TableRow[] => {
    const tag = `${name}-${port}`;
    if (dropIds.length === 0) return [{ cells: [tag, "no drop", "", "", "", "", "", "□", "□"] }];
    return dropIds.map((id) => ({
      cells: [
        tag,
        plant.rowOf("livingUnit", plant.rowOf("drop", id).livingUnitId).address,
        lengthCell(dropCutM(plant, id), system),
        "",
        "",
        "",
        "",
        "",
        "□",
      ],
    }));
  });
  return [{ group: name }, ...rows];
}
