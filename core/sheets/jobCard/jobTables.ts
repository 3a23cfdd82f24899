import { subjectOf } from "../../closeout/subject.ts";
import { colourAt } from "../../fiber/colourCode.ts";
import { dropCutM, dropRunM } from "../../plant/dropView.ts";
import type { Plant } from "../../plant/plant.ts";
import type { FieldsRead } from "../asBuilt/fieldsRead.ts";
import { lengthCell } from "../paper/figure.ts";
import type { Block } from "../paper/flow.ts";
import { panelHead, panelRuleMm, tableUnderHead } from "../paper/panel.ts";
import type { PaperBox } from "../paper/paper.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import { drawTable } from "../paper/table.ts";
import { tableHeightMm } from "../paper/tableCells.ts";
import { pageRows } from "../paper/tablePages.ts";
import { type Column, type TableRow, tickBox } from "../paper/tableRow.ts";
import { emptyPortWords } from "../tradeWords.ts";
import { colourWords, type TerminalFacts } from "./terminalFacts.ts";

const whiteMm = 2.6;

const fiberColumns: readonly Column[] = [
  { heading: "Fiber", share: 12, align: "right" },
  { heading: "Tube", share: 36, chip: true },
  { heading: "Fiber colour", share: 34, chip: true },
  { heading: "Spliced to", share: 30 },
  { heading: "Lights ports", share: 22 },
  { heading: "Lit by", share: 26 },
  { heading: "Loss", unit: "dB", share: 16 },
  { heading: "Back", unit: "dB", share: 16 },
];

/** Headings of splices would ask to be filled in where nothing is spliced. */
const noFiber: readonly Column[] = [{ heading: "No fiber feeds this terminal yet", share: 1 }];

/** The fibers of a terminal to cut and splice, each with its chips and fields for the splice's loss both ways. */
export function fiberBlock(facts: TerminalFacts, column: PaperBox): Block {
  const rows: readonly TableRow[] = facts.fibers.map(({ use, tube, place, splitter, feedName }) => ({
    cells: [
      String(use.fiber),
      `${tube}  ${colourWords(tube)}`,
      `${place}  ${colourWords(place)}`,
      splitter ? `splitter ${splitter.position}, input` : use.purpose,
      splitter ? `${splitter.firstPort} to ${splitter.firstPort + splitter.legCount - 1}` : "",
      feedName,
    ],
    chips: [tube, place],
  }));
  const columns = rows.length > 0 ? fiberColumns : noFiber;
  return {
    heightMm: panelRuleMm + tableHeightMm(columns, rows, column, true) + whiteMm,
    draw: (box) => [
      ...panelHead("Fibers to cut and splice", box),
      ...drawTable(columns, rows, tableUnderHead(box), true).marks,
    ],
  };
}

/** Every port with whom it serves, and the length each drop is cut to; in pieces where a column is lower than the table. */
export function portBlocks(plant: Plant, facts: TerminalFacts, column: PaperBox, read: FieldsRead): readonly Block[] {
  const columns = portColumns(facts);
  const room = { ...column, top: column.top - panelRuleMm };
  return pageRows(columns, portRows(plant, facts, read), room).map((rows, index) => ({
    heightMm: panelRuleMm + tableHeightMm(columns, rows, column) + whiteMm,
    draw: (box) => [
      ...panelHead(index === 0 ? "Ports and drops" : "Ports and drops, continued", box),
      ...drawTable(columns, rows, tableUnderHead(box)).marks,
    ],
  }));
}

function portColumns(facts: TerminalFacts): readonly Column[] {
  const unit = lengthUnit(facts.settings.unitSystem);
  return [
    { heading: "Port", share: 11, align: "right" },
    { heading: "Splitter", share: 15, align: "right" },
    { heading: "Leg", share: 10, align: "right" },
    { heading: "Fiber", share: 15 },
    { heading: "Living unit", share: 78 },
    { heading: "Run", unit, share: 16, align: "right" },
    { heading: "Cut drop to", unit, share: 22, align: "right" },
    { heading: "House tag", share: 24 },
    { heading: "Hung", share: 12 },
  ];
}

function portRows(plant: Plant, facts: TerminalFacts, read: FieldsRead): readonly TableRow[] {
  const system = facts.settings.unitSystem;
  return facts.ports.flatMap((port) => {
    const splitter = port.splitterId === null ? "" : String(plant.rowOf("splitter", port.splitterId).position);
    const fiber = facts.fibers.find((one) => one.use.splitterId !== null && one.use.splitterId === port.splitterId);
    const letters = fiber ? `${colourAt(fiber.tube).abbreviation} ${colourAt(fiber.place).abbreviation}` : "";
    const light = [String(port.port), splitter, port.leg === null ? "" : String(port.leg), letters];
    if (port.dropIds.length === 0)
      return [{ cells: [...light, `${emptyPortWords(facts.terminal, port)}, cap on`, "", "", "", "□"] }];
    return port.dropIds.map((dropId) => ({
      cells: [
        ...light,
        plant.rowOf("livingUnit", plant.rowOf("drop", dropId).livingUnitId).address,
        lengthCell(dropRunM(plant, dropId), system),
        lengthCell(dropCutM(plant, dropId), system),
        `${facts.terminal.name}-${port.port}`,
        tickBox(read.value(subjectOf("drop", dropId), "portOfDrop") === port.port),
      ],
    }));
  });
}
