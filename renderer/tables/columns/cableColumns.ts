import { sheathLength, terminalsAlong } from "../../../core/plant/cablePath.ts";
import { usesOfCable } from "../../../core/plant/fiberView.ts";
import { byCommand, computed, explained, figures, reference, told, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { forceMeasure, plainMeasure, runMeasure } from "./measures.ts";

const table = "cable";
const counted = plainMeasure("", 0);

export const cableColumns: readonly Column[] = [
  words({ table, column: "name" }, "Cable", { mayBeEmpty: false, widthPx: 110 }),
  reference(
    { table, column: "cableTypeId" },
    "Type",
    { table: "cableType", column: "name" },
    {
      widthPx: 220,
      steps: byCommand("cable.resize", (_, cableId, cableTypeId) => ({ cableId, cableTypeId })),
    },
  ),
  told("from", "Comes from", (plant, id) => {
    const { fromClosureId } = plant.rowOf(table, id);
    return fromClosureId === null ? "the hub" : `closure ${plant.rowOf("closure", fromClosureId).name}`;
  }),
  computed(
    "fibers",
    "Fibers",
    counted,
    (plant, id) => plant.rowOf("cableType", plant.rowOf(table, id).cableTypeId).fiberCount,
  ),
  computed("used", "Fibers used", counted, (plant, id) => usesOfCable(plant, id).length, 110),
  computed("terminals", "Terminals", counted, (plant, id) => terminalsAlong(plant, id).length),
  computed("along", "Along spans", runMeasure, (plant, id) => sheathLength(plant, id).spansM, 120),
  computed("coiled", "In coils", runMeasure, (plant, id) => sheathLength(plant, id).coilsM),
  explained(
    computed("sheath", "Sheath in all", runMeasure, (plant, id) => sheathLength(plant, id).totalM, 130),
    (_, id) => ({ figure: "sheath", id }),
  ),
  figures({ table, column: "reelLengthM" }, "Reel", runMeasure),
  computed(
    "pull",
    "Pull in with at most",
    forceMeasure,
    (plant, id) => plant.rowOf("cableType", plant.rowOf(table, id).cableTypeId).pullN,
    160,
  ),
];
