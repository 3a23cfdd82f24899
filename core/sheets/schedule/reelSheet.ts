import { cablesInOrder } from "../../plant/cableOrder.ts";
import { type CableStep, cablePath, sheathLength, sheathToM } from "../../plant/cablePath.ts";
import type { Plant } from "../../plant/plant.ts";
import { byText } from "../../plant/sorting.ts";
import { catalogueBasis } from "../../rules/rule.ts";
import { isOver } from "../../rules/withinLimit.ts";
import { formatForce } from "../../units/formatForce.ts";
import { redlinedSchedule } from "../asBuilt/redlinedRows.ts";
import type { Draft } from "../book.ts";
import { type Cell, cellText, lengthCell, stationCell } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { markWords } from "../sourceWords.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

/** Every cable with its reel, and its sheath counted up from pole to pole. */
export function reelDrafts(plant: Plant, paper: Paper, designed: Plant | null): readonly Draft[] {
  const { columns, rows, notes } = redlinedSchedule(reelSchedule(plant), designed && reelSchedule(designed));
  const foot = noteFoot(notes, paper.drawing);
  return tableDrafts({
    kind: "reel",
    title: "Cable and reel schedule",
    columns,
    rows,
    box: foot.rest,
    leastMm: 180,
    beside: foot.marks,
  });
}

export function reelSchedule(plant: Plant): Schedule {
  const rows = cablesInOrder(plant).flatMap((cable) => cableRows(plant, cable.id));
  return { name: "Cables and reels", grouped: "Cable", columns: columnsOf(plant), rows, notes: [footNote] };
}

function columnsOf(plant: Plant): readonly Column[] {
  const unit = lengthUnit(plant.settings().unitSystem);
  return [
    { heading: "Pole", share: 30 },
    { heading: "Station", innerUnit: unit, share: 22, align: "right" },
    { heading: "Sheath here", unit, share: 24, align: "right" },
    { heading: "Span on", unit, share: 20, align: "right" },
    { heading: "Coils in it", unit, share: 22, align: "right" },
    { heading: "Hangs in it", share: 46 },
    { heading: "Mark read", unit, share: 26 },
  ];
}

function cableRows(plant: Plant, cableId: string): readonly TableRow[] {
  const { steps, lengthM, gapAtPoleId } = cablePath(plant, cableId);
  const last = steps.at(-1);
  const end = last
    ? [{ cells: poleCells(plant, cableId, last.outPoleId, lengthM, [last.spanId, last.reversed ? 0 : last.lengthM]) }]
    : [];
  const gap =
    gapAtPoleId === null
      ? []
      : [{ note: `◆ The way of this cable is broken at pole ${plant.rowOf("pole", gapAtPoleId).tag}.` }];
  return [
    { group: headingOf(plant, cableId), of: plant.rowOf("cable", cableId).name },
    ...steps.map((step) => ({ cells: stepCells(plant, cableId, step) })),
    ...end,
    ...gap,
  ];
}

/** What the cable is, how much of its reel it takes and what is left. */
function headingOf(plant: Plant, cableId: string): string {
  const system = plant.settings().unitSystem;
  const length = (valueM: number) => `${cellText(lengthCell(valueM, system))} ${lengthUnit(system)}`;
  const { name, cableTypeId, reelLengthM } = plant.rowOf("cable", cableId);
  const { totalM, coilsM } = sheathLength(plant, cableId);
  const rest = isOver(totalM, reelLengthM)
    ? `◆ ${length(totalM - reelLengthM)} longer than its reel`
    : `${length(reelLengthM - totalM)} left on a reel of ${length(reelLengthM)}`;
  const type = plant.rowOf("cableType", cableTypeId);
  const pull = `pull it in with ${formatForce(type.pullN, system)} at most, ${markWords[catalogueBasis(type).mark]}`;
  const sheath = `sheath ${length(totalM)}, ${length(coilsM)} of it in coils`;
  return `${name}: ${type.name}; ${sheath}; ${rest}; ${pull}`;
}

function poleCells(
  plant: Plant,
  cableId: string,
  poleId: string,
  stationM: number,
  [spanId, offsetM]: readonly [spanId: string, offsetM: number],
): readonly Cell[] {
  const system = plant.settings().unitSystem;
  const sheathM = sheathToM(plant, cableId, spanId, offsetM) ?? stationM;
  return [plant.rowOf("pole", poleId).tag, stationCell(stationM, system), lengthCell(sheathM, system)];
}

function stepCells(plant: Plant, cableId: string, step: CableStep): readonly Cell[] {
  const system = plant.settings().unitSystem;
  const { spanId, reversed, inPoleId, startM, lengthM } = step;
  const coils = plant.whereAll("slack", { spanId, cableId }).map((id) => plant.rowOf("slack", id));
  const hung = [
    ...plant.whereAll("terminal", { spanId, cableId }).map((id) => plant.rowOf("terminal", id)),
    ...plant.whereAll("closure", { spanId, cableId }).map((id) => plant.rowOf("closure", id)),
  ].sort((a, b) => (a.offsetM - b.offsetM) * (reversed ? -1 : 1) || byText(a.id, b.id));
  const storedM = coils.reduce((sum, one) => sum + one.storedM, 0);
  return [
    ...poleCells(plant, cableId, inPoleId, startM, [spanId, reversed ? lengthM : 0]),
    lengthCell(lengthM, system),
    storedM > 0 ? lengthCell(storedM, system) : "",
    hung.map((one) => one.name).join(", "),
  ];
}

const footNote =
  "Sheath here: from the feed end along the spans, with the coils passed on the way. Write the mark read off the sheath beside it. The cable maker's figure of pulling tension governs.";
