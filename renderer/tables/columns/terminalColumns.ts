import { spanName } from "../../../core/plant/names.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { portCounts, terminalHang, terminalPlace } from "../../../core/plant/terminalView.ts";
import { byCommand, computed, explained, figures, reference, told, words, yesNo } from "./builders.ts";
import type { CellValue, Column } from "./column.ts";
import { plainMeasure, runMeasure, shortMeasure } from "./measures.ts";

const table = "terminal";
const counted = plainMeasure("", 0);

export const terminalColumns: readonly Column[] = [
  words({ table, column: "name" }, "Terminal", {
    mayBeEmpty: false,
    widthPx: 110,
    steps: byCommand("terminal.rename", (_, terminalId, name) => ({ terminalId, name })),
  }),
  reference(
    { table, column: "terminalModelId" },
    "Model",
    { table: "terminalModel", column: "name" },
    {
      widthPx: 200,
      steps: byCommand("terminal.resize", (_, terminalId, terminalModelId) => ({ terminalId, terminalModelId })),
    },
  ),
  told("pole", "At pole", (plant, id) => plant.rowOf("pole", terminalHang(plant, id).poleId).tag, 100),
  {
    ...figures({ table, column: "offsetM" }, "From the pole", shortMeasure, {
      widthPx: 130,
      steps: byCommand("terminal.move", moved),
      warn: nearerThanStandard,
    }),
    value: (plant, id) => terminalHang(plant, id).fromPoleM,
  },
  told("span", "Span", (plant, id) => spanName(plant, plant.rowOf(table, id).spanId), 170),
  told("cable", "Cable", (plant, id) => plant.rowOf("cable", plant.rowOf(table, id).cableId).name, 100),
  explained(
    computed("station", "From the feed end", runMeasure, (plant, id) => terminalPlace(plant, id).stationM, 150),
    (_, id) => ({ figure: "terminalStation", id }),
  ),
  computed("ports", "Ports", counted, (plant, id) => portCounts(plant, id).total, 80),
  computed("used", "Used", counted, (plant, id) => portCounts(plant, id).used, 80),
  computed("spare", "Spare", counted, (plant, id) => portCounts(plant, id).spare, 80),
  figures({ table, column: "reservedPortCount" }, "Reserved", counted, {
    widthPx: 90,
    steps: byCommand("terminal.reserve", (_, terminalId, value) => ({ terminalId, reservedPortCount: Number(value) })),
  }),
  words({ table, column: "reservedFor" }, "Reserved for", { mayBeEmpty: true, widthPx: 160 }),
  yesNo({ table, column: "pinned" }, "Pinned", {
    steps: byCommand("terminal.pin", (_, terminalId, pinned) => ({ terminalId, pinned })),
  }),
  told("reason", "Why here", (plant, id) => plant.rowOf(table, id).reason, 240),
];

function moved(plant: Plant, terminalId: string, value: CellValue): object {
  const { spanId } = plant.rowOf(table, terminalId);
  const { lengthM } = plant.rowOf("span", spanId);
  const fromPoleM = Number(value);
  return { terminalId, spanId, offsetM: terminalHang(plant, terminalId).atFirstPole ? fromPoleM : lengthM - fromPoleM };
}

function nearerThanStandard(plant: Plant, _: string, value: CellValue): string | null {
  const isNear = typeof value === "number" && value < plant.settings().standoffM - 1e-6;
  return isNear ? "Nearer to the pole than the settings ask; taken all the same." : null;
}
