import { dropCutM, dropsOfUnit } from "../../../core/plant/dropView.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { choice, computed, explained, figures, told, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { heightMeasure, plainMeasure, runMeasure } from "./measures.ts";

const table = "livingUnit";

export const unitColumns: readonly Column[] = [
  words({ table, column: "address" }, "Address", { mayBeEmpty: false, widthPx: 240 }),
  choice({ table, column: "kind" }, "Kind", { home: "home", business: "business", lot: "lot without a building" }),
  words({ table, column: "building" }, "Building"),
  told("terminal", "Terminal", (plant, id) => {
    const drop = firstDrop(plant, id);
    return drop ? plant.rowOf("terminal", drop.terminalId).name : "";
  }),
  computed("port", "Port", plainMeasure("", 0), (plant, id) => firstDrop(plant, id)?.port ?? null, 70),
  explained(
    computed(
      "cut",
      "Drop to cut",
      runMeasure,
      (plant, id) => {
        const drop = firstDrop(plant, id);
        return drop ? dropCutM(plant, drop.id) : null;
      },
      120,
    ),
    (plant, id) => {
      const drop = firstDrop(plant, id);
      return drop ? { figure: "dropCut", id: drop.id } : null;
    },
  ),
  figures({ table, column: "attachHeightM" }, "Drop attaches at", heightMeasure, { mayBeEmpty: true, widthPx: 150 }),
  figures({ table, column: "eastM" }, "East", runMeasure),
  figures({ table, column: "northM" }, "North", runMeasure),
  words({ table, column: "note" }, "Note", { widthPx: 220 }),
  figures({ table, column: "groundM" }, "Ground", heightMeasure, { mayBeEmpty: true }),
];

function firstDrop(plant: Plant, unitId: string) {
  const [dropId] = dropsOfUnit(plant, unitId);
  return dropId === undefined ? undefined : plant.rowOf("drop", dropId);
}
