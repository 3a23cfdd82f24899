import { colourAt } from "../../fiber/colourCode.ts";
import { dropCutM, dropRunM } from "../../plant/dropView.ts";
import { tubeOf, usesOfTerminal } from "../../plant/fiberView.ts";
import type { Plant } from "../../plant/plant.ts";
import type { PortReading } from "../../plant/portReading.ts";
import { portsOf } from "../../plant/terminalView.ts";
import { fixedText } from "../../units/fixedText.ts";
import { type FieldsRead, fieldsRead, nothingRead } from "../asBuilt/fieldsRead.ts";
import { redlinedSchedule } from "../asBuilt/redlinedRows.ts";
import type { Draft } from "../book.ts";
import { readingSources, terminalReadings, waveWords } from "../jobCard/terminalReadings.ts";
import { figure, lengthCell } from "../paper/figure.ts";
import type { Paper } from "../paper/paper.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { emptyPortWords } from "../tradeWords.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

/** Port and drop schedule: every port of every terminal, two columns of rows a sheet. */
export function scheduleDrafts(
  plant: Plant,
  paper: Paper,
  terminalIds: readonly string[],
  designed: Plant | null,
): readonly Draft[] {
  const { columns, rows } = redlinedSchedule(
    portSchedule(plant, terminalIds, designed ? fieldsRead(plant) : nothingRead),
    designed && portSchedule(designed, terminalIds),
    readColumns,
  );
  return tableDrafts({
    kind: "schedule",
    title: "Port and drop schedule",
    columns,
    rows,
    box: paper.drawing,
    leastMm: 180,
    ruled: true,
  });
}

/** What a reading tells of a drop: whose port it is. Its run follows from where the terminal hangs, and nobody read it. */
const readColumns: readonly string[] = ["Living unit", "House tag"];

export function portSchedule(plant: Plant, terminalIds: readonly string[], read: FieldsRead = nothingRead): Schedule {
  const rows = terminalIds.flatMap((id) => terminalRows(plant, id, read));
  return { name: "Ports and drops", grouped: "Terminal", columns: scheduleColumns(plant), rows, notes: [] };
}

function scheduleColumns(plant: Plant): readonly Column[] {
  const unit = lengthUnit(plant.settings().unitSystem);
  return [
    { heading: "Port", share: 9, align: "right" },
    { heading: "Fiber", share: 10, align: "right" },
    { heading: "Tube", share: 10 },
    { heading: "Colour", share: 12 },
    { heading: "Leg", share: 9, align: "right" },
    { heading: "Living unit", share: 48 },
    { heading: "Run", unit, share: 14, align: "right" },
    { heading: "Cut", unit, share: 14, align: "right" },
    { heading: "House tag", share: 18 },
    { heading: "Light expected", unit: "dBm", share: 23, align: "right" },
    { heading: "Measured", unit: "dBm", share: 22 },
  ];
}

function terminalRows(plant: Plant, terminalId: string, read: FieldsRead): readonly TableRow[] {
  const system = plant.settings().unitSystem;
  const terminal = plant.rowOf("terminal", terminalId);
  const ports = portsOf(plant, terminalId);
  const uses = usesOfTerminal(plant, terminalId).map((id) => plant.rowOf("fiberUse", id));
  const used = ports.filter((one) => one.dropIds.length > 0).length;
  const model = plant.rowOf("terminalModel", terminal.terminalModelId).name;
  const readings = terminalReadings(plant, terminalId);
  const rows = ports.flatMap((port, index) => {
    const use = uses.find((one) => one.splitterId !== null && one.splitterId === port.splitterId);
    const tube = use ? tubeOf(plant, use.cableId, use.fiber) : null;
    const light = [
      use ? figure(use.fiber, 0) : "",
      tube ? colourAt(tube.tube).abbreviation : "",
      tube ? colourAt(tube.place).abbreviation : "",
      port.leg === null ? "" : figure(port.leg, 0),
    ];
    const expected = readingText(readings[index]?.reading);
    const measured = read.lightText(terminalId, port.port);
    if (port.dropIds.length === 0)
      return [
        { cells: [figure(port.port, 0), ...light, emptyPortWords(terminal, port), "", "", "", expected, measured] },
      ];
    return port.dropIds.map((dropId) => ({
      cells: [
        figure(port.port, 0),
        ...light,
        plant.rowOf("livingUnit", plant.rowOf("drop", dropId).livingUnitId).address,
        lengthCell(dropRunM(plant, dropId), system),
        lengthCell(dropCutM(plant, dropId), system),
        `${terminal.name}-${port.port}`,
        expected,
        measured,
      ],
    }));
  });
  const sources = readingSources(plant, readings).join("; ");
  const light = sources === "" ? "" : `; light${waveWords(plant, readings)} by ${sources}`;
  return [
    { group: `${terminal.name}   ${model}, ${used} of ${ports.length} ports used${light}`, of: terminal.name },
    ...rows,
  ];
}

/** The light a meter should show at a port before its drop is plugged in, dBm. */
function readingText(reading: PortReading | undefined): string {
  if (reading?.kind !== "known" || reading.arrives === null) return "not known";
  return `${fixedText(reading.arrives.leastDbm, 1)} to ${fixedText(reading.arrives.mostDbm, 1)}`;
}
